package org.pullproof.ui.values;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.pullproof.session.Judgement;
import org.pullproof.session.TradeConstant;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.units.Figures;

/** State and decisions of the page of the values that the program judges by. */
public final class ValuesViewModel {
    private final SessionViewModel model;
    private final ValueActs acts;
    private final List<TradeConstant> constants;
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");

    public ValuesViewModel(SessionViewModel model, ValueActs acts, List<TradeConstant> constants) {
        this.model = model;
        this.acts = acts;
        this.constants = List.copyOf(constants);
    }

    SessionViewModel model() {
        return model;
    }

    /** Why the last values were not kept, or empty. */
    public ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    private Judgement judgement() {
        return model.session().judgement();
    }

    /** The constants in whose name or words every word of the search stands. */
    public List<TradeConstant> found(String search) {
        List<String> words = List.of(search.strip().toLowerCase(Locale.ROOT).split("\\s+", -1));
        return constants.stream()
                .filter(constant -> words.stream().allMatch(searched(constant)::contains))
                .toList();
    }

    private static String searched(TradeConstant constant) {
        return (constant.name() + " " + constant.words() + " " + constant.status()).toLowerCase(Locale.ROOT);
    }

    /** What a number is now, edited or the program's own. */
    public double value(TradeConstant.Figure number) {
        return judgement().of(number.name()).orElse(number.own());
    }

    public boolean isEdited(TradeConstant constant) {
        return constant.numbers().stream()
                .anyMatch(number -> judgement().of(number.name()).isPresent());
    }

    /** "0.45 cylinders an engine"; several numbers only counted. */
    public String inShort(TradeConstant constant) {
        int count = constant.numbers().size();
        if (count == 1) {
            return (Figures.plain(value(constant.numbers().get(0))) + " " + constant.unit()).strip();
        }
        String figures = count == 0 ? "words" : count + " values";
        return constant.unit().isBlank() ? figures : figures + ", " + constant.unit();
    }

    /** How many values of this session are its own. */
    public String answer() {
        int edited = judgement().edited().size();
        return edited == 0
                ? "This session judges by the program's own values."
                : "This session judges by " + edited + (edited == 1 ? " value" : " values") + " of its own.";
    }

    /** Keeps the values typed for one constant: all of them or none. */
    public void keep(TradeConstant constant, Map<TradeConstant.Figure, Double> typed) {
        Map<String, Optional<Double>> values = new TreeMap<>();
        typed.forEach((number, value) -> {
            if (value != value(number)) {
                values.put(number.name(), value == number.own() ? Optional.empty() : Optional.of(value));
            }
        });
        act(values);
    }

    /** Goes back to the program's own values of one constant. */
    public void back(TradeConstant constant) {
        act(constant.numbers().stream()
                .map(TradeConstant.Figure::name)
                .filter(name -> judgement().of(name).isPresent())
                .collect(Collectors.toMap(name -> name, name -> Optional.empty())));
    }

    private void act(Map<String, Optional<Double>> values) {
        problem.set("");
        if (!values.isEmpty()) {
            model.act(acts.edit(values), problem::set);
        }
    }

    /** Goes back to the program's own values throughout. */
    public void reset() {
        problem.set("");
        model.act(acts.reset(), problem::set);
    }
}
