package org.pullproof.ui.car;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.pullproof.app.ChooseProfile;
import org.pullproof.app.SetFacts;
import org.pullproof.car.Access;
import org.pullproof.car.Fact;
import org.pullproof.car.Runs;
import org.pullproof.engine.Crossfire;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.Ignition;
import org.pullproof.engine.Rotor;
import org.pullproof.session.Session;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.units.Figures;
import org.pullproof.units.Shown;
import org.pullproof.weather.Standard;

/** What the sheet Car shows and does; knows no control. */
public final class CarViewModel {
    /** What is told of the car itself. */
    static final List<Fact> OF_THE_CAR = List.of(
            Fact.ODOMETER,
            Fact.PRICE,
            Fact.LEAST_PRICE,
            Fact.FUEL,
            Fact.GEAR,
            Fact.ELEVATION,
            Fact.BAND,
            Fact.IDENTITY,
            Fact.SELLER_SAYS);

    /** What only its owner can say. */
    static final List<Fact> WISHES = List.of(
            Fact.WORTH_SOUND,
            Fact.VALUE_PER_HP,
            Fact.HOUR_PRICE,
            Fact.BUDGET,
            Fact.SPENT,
            Fact.SMALLEST_DIFFERENCE,
            Fact.COMPRESSION_RULE,
            Fact.MONTHS,
            Fact.WEEK_WITHOUT,
            Fact.HARD_PULLS);

    private final SessionViewModel model;
    private final SetFacts setFacts;
    private final ChooseProfile chooseProfile;
    private final List<EngineProfile> profiles;

    /**
     * @param profiles the engines to choose from
     */
    public CarViewModel(
            SessionViewModel model, SetFacts setFacts, ChooseProfile chooseProfile, List<EngineProfile> profiles) {
        this.model = model;
        this.setFacts = setFacts;
        this.chooseProfile = chooseProfile;
        this.profiles = List.copyOf(profiles);
    }

    SessionViewModel model() {
        return model;
    }

    Session session() {
        return model.session();
    }

    EngineProfile profile() {
        return session().profile();
    }

    List<EngineProfile> profiles() {
        return profiles;
    }

    Figures figures() {
        return model.look().figures();
    }

    /** Tells a fact; an empty text forgets it. */
    void tell(Fact fact, String text, Consumer<String> refused) {
        model.act(open -> setFacts.set(open, Map.of(fact.key(), text)), refused);
    }

    void permit(Access access) {
        model.act(open -> setFacts.set(open, Map.of(Fact.ACCESS.key(), access.key())));
    }

    void runs(Runs runs) {
        model.act(open -> setFacts.set(open, Map.of(Fact.RUNS.key(), runs.key())));
    }

    void correctTo(Standard standard) {
        model.act(open -> setFacts.set(open, Map.of(SetFacts.STANDARD, standard.key())));
    }

    void choose(EngineProfile profile) {
        if (!profile.equals(profile())) {
            model.act(open -> chooseProfile.choose(open, profile));
        }
    }

    String ignition() {
        String turns = profile().rotor() == Rotor.NONE
                ? ""
                : ", rotor turns " + profile().rotor().name().toLowerCase(java.util.Locale.ROOT) + " from above";
        return profile().ignition().words() + turns;
    }

    String fuelSystem() {
        return profile().fuel().words() + (profile().charged() ? ", charged" : "");
    }

    /** Wires that must not run side by side, those of neighbours first; nothing where coils sit on the plugs. */
    String wires() {
        if (profile().ignition() == Ignition.COIL_ON_PLUG) {
            return "none: a coil sits on every plug";
        }
        List<Crossfire.Pair> pairs = Crossfire.pairs(profile());
        return pairs.isEmpty()
                ? "no two of one bank fire in succession"
                : pairs.stream()
                        .sorted(java.util.Comparator.comparing(Crossfire.Pair::adjacent)
                                .reversed())
                        .map(CarViewModel::pair)
                        .collect(java.util.stream.Collectors.joining("; "));
    }

    private static String pair(Crossfire.Pair pair) {
        return pair.first() + " and " + pair.second()
                + (pair.adjacent() ? " first of all: side by side" : ", same bank");
    }

    String boreAndStroke() {
        return figures().bare(profile().geometry().boreMetre(), Shown.BORE) + " × "
                + figures().of(profile().geometry().strokeMetre(), Shown.BORE);
    }

    String compressionRatio() {
        return Figures.number(profile().geometry().compressionRatio(), 1) + " : 1 from the profile";
    }

    String plugs() {
        return figures().bare(profile().plugs().gapFrom().si(), Shown.GAP) + " to "
                + figures().of(profile().plugs().gapTo().si(), Shown.GAP) + "; "
                + figures().bare(profile().plugs().torqueFrom().si(), Shown.TORQUE) + " to "
                + figures().of(profile().plugs().torqueTo().si(), Shown.TORQUE) + ", "
                + profile().plugs().seat();
    }
}
