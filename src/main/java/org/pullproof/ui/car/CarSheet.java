package org.pullproof.ui.car;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.pullproof.advice.Stage;
import org.pullproof.car.Fact;
import org.pullproof.car.Runs;
import org.pullproof.ui.parts.Choice;
import org.pullproof.ui.parts.FactField;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.SheetStyle;
import org.pullproof.ui.shell.Sheet;
import org.pullproof.weather.Standard;
import org.pullproof.weather.StandardNote;

/** What is it, and what may be done to it? Access, the engine as drawn, the car and the owner's wishes, edited in place. */
public final class CarSheet implements Sheet {
    private final CarViewModel model;
    private final HBox page = new HBox(28);
    private final AccessList access;
    private final Choice<Runs> runs = new Choice<>("Does it run?", Arrays.asList(Runs.values()), Runs::words);
    private final Label aboutStandard = Labels.wrapped("", "caption");
    private final Choice<Standard> standard =
            new Choice<>("Power is corrected to", Arrays.asList(Standard.values()), CarSheet::inShort);
    private final EnginePanel engine;
    private final Map<Fact, FactField> fields = new EnumMap<>(Fact.class);

    public CarSheet(CarViewModel model) {
        this.model = model;
        this.access = new AccessList(model);
        this.engine = new EnginePanel(model);
        page.getStyleClass().add("car-sheet");
        SheetStyle.on(page);
        runs.onChosen(model::runs);
        standard.onChosen(model::correctTo);
        VBox left = left();
        left.getStyleClass().add("car-left");
        VBox right = new VBox(14, engine, section("What the owner wishes", CarViewModel.WISHES));
        HBox.setHgrow(right, Priority.ALWAYS);
        page.getChildren().setAll(left, right);
        model.model().appraisalProperty().addListener((of, before, after) -> show());
        show();
    }

    private static String inShort(Standard standard) {
        return standard.words().replace("SAE ", "");
    }

    private VBox left() {
        HBox running = new HBox(12, Labels.whole("Does it run?"), runs);
        running.setAlignment(Pos.CENTER_LEFT);
        VBox corrected = new VBox(4, Labels.whole("Power is corrected to", "caption"), standard, aboutStandard);
        return new VBox(
                12,
                new VBox(4, Labels.section("What the owner permits now", ""), access),
                running,
                section("The car", CarViewModel.OF_THE_CAR),
                corrected);
    }

    private Node section(String title, List<Fact> facts) {
        List<Node> rows = new ArrayList<>(List.of(Labels.section(title, "")));
        facts.forEach(fact -> rows.add(row(fact)));
        return new VBox(rows.toArray(Node[]::new));
    }

    private Node row(Fact fact) {
        Label caption = Labels.wrapped(fact.words(), "caption");
        caption.getStyleClass().add("fact-name");
        FactField field = new FactField(fact, model::figures, this::tell);
        fields.put(fact, field);
        HBox.setHgrow(field, Priority.ALWAYS);
        if (fact == Fact.SELLER_SAYS) {
            // a story needs the whole line
            VBox lines = new VBox(caption, field);
            lines.getStyleClass().addAll("fact-row", "fact-story");
            return lines;
        }
        HBox row = new HBox(caption, field);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("fact-row");
        row.setMinHeight(Region.USE_PREF_SIZE);
        return row;
    }

    private void tell(Fact fact, String text) {
        FactField field = fields.get(fact);
        model.tell(fact, text, why -> {
            if (field != null) {
                field.refuse(why);
            }
        });
    }

    private void show() {
        access.show();
        runs.show(model.session().car().runs());
        standard.show(java.util.Optional.of(model.session().standard()));
        aboutStandard.setText(StandardNote.of(model.session().standard()).sentence());
        engine.show();
        fields.forEach((fact, field) -> {
            if (!field.isChanged() && !field.isRefused()) {
                field.show(model.session().car().told(fact).orElse(""));
            }
        });
    }

    @Override
    public Stage stage() {
        return Stage.CAR;
    }

    @Override
    public Node node() {
        return page;
    }
}
