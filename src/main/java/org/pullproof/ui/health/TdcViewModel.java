package org.pullproof.ui.health;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.SimpleIntegerProperty;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.Rotor;
import org.pullproof.engine.TdcTable;
import org.pullproof.engine.TopSigns;
import org.pullproof.health.Reading;
import org.pullproof.health.TestKind;
import org.pullproof.health.leakdown.LeakReading;
import org.pullproof.health.leakdown.LeakTester;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.Sentence;
import org.pullproof.units.Shown;
import org.pullproof.units.UnitSystem;

/** State of the TDC guide: the cylinder that stands at top dead centre on compression, and what follows from it. */
public final class TdcViewModel {
    private static final List<Integer> OFF = List.of(2, 5, 10, 20);

    private final SessionViewModel session;
    private final List<String> cautions;
    private final IntegerProperty now = new SimpleIntegerProperty(1);

    /**
     * @param cautions before air goes into a cylinder
     */
    public TdcViewModel(SessionViewModel session, List<String> cautions) {
        this.session = session;
        this.cautions = List.copyOf(cautions);
    }

    /**
     * A line of the table: its name, and a word for each cylinder in firing order.
     *
     * @param name what the words are
     * @param words one a cylinder
     * @param marked the cylinder whose word is the one that counts now, if one does
     */
    public record Line(String name, List<String> words, OptionalInt marked) {}

    /**
     * How hard air pushes on the crank.
     *
     * @param degrees off top dead centre
     * @param torque in the units of the sheet
     * @param other in the other units
     */
    public record Push(String degrees, String torque, String other) {}

    public IntegerProperty nowProperty() {
        return now;
    }

    EngineProfile engine() {
        return session.session().profile();
    }

    private Figures figures() {
        return session.look().figures();
    }

    /** Shows a cylinder at top dead centre; one this engine lacks is its first. */
    public void stand(int cylinder) {
        now.set(cylinder <= engine().cylinders() ? cylinder : order().get(0));
    }

    /** The crank was turned to the next cylinder. */
    public void turned() {
        now.set(table().turnFrom(now.get()).to());
    }

    /** Back to the cylinder before. */
    public void before() {
        now.set(table().before(now.get()));
    }

    private TdcTable table() {
        return TdcTable.of(engine());
    }

    public String question() {
        return "Which cylinder is at top dead centre on compression?";
    }

    public Sentence answer() {
        return TdcWords.turn(engine(), now.get());
    }

    /** Where the intervals come from. */
    public String source() {
        boolean odd = engine().firing().intervals().stream().distinct().count() > 1;
        return odd
                ? "odd-fire, intervals by the profile's list"
                : "even fire, every " + engine().firing().intervals().get(0) + "°";
    }

    /** Cautions before air goes into a cylinder. */
    public List<String> cautions() {
        return cautions;
    }

    public boolean hasDistributor() {
        return engine().rotor() != Rotor.NONE;
    }

    /** How a person knows that it is compression, not the end of the exhaust stroke. */
    public List<String> signs() {
        List<String> signs = new ArrayList<>(TopSigns.of(engine(), now.get()));
        signs.add(
                "Turn the way it runs: clockwise seen from the damper on nearly all engines, the manual says where not. Chalk"
                        + " the marks it lacks.");
        return signs;
    }

    /** Cylinders in firing order. */
    public List<Integer> order() {
        return engine().firing().cylinders();
    }

    /** The table below the strip, in firing order. */
    public List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        OptionalInt next = OptionalInt.of(table().turnFrom(now.get()).to());
        lines.add(line("Turn from the last one", next, row -> turnTo(row.number())));
        lines.add(line("Damper past its first mark", OptionalInt.empty(), row -> row.damperDegrees() + "°"));
        if (hasDistributor()) {
            lines.add(line(
                    "Rotor from post " + order().get(0),
                    OptionalInt.empty(),
                    row -> TdcWords.degrees(row.rotorDegrees().orElseThrow())));
        }
        lines.add(line("Leak-down", OptionalInt.of(now.get()), row -> leak(row.number())));
        return lines;
    }

    private Line line(String name, OptionalInt marked, Function<TdcTable.Row, String> words) {
        return new Line(name, table().rows().stream().map(words).toList(), marked);
    }

    private String turnTo(int cylinder) {
        TdcTable.Turn turn = table().turnFrom(table().before(cylinder));
        return table().row(cylinder).crankDegrees() == 0 ? "start" : turn.crankDegrees() + "°";
    }

    private String leak(int cylinder) {
        return session.session().readings().stream()
                .filter(reading -> reading.test() == TestKind.LEAKDOWN)
                .filter(reading -> reading.cylinder().equals(OptionalInt.of(cylinder)))
                .reduce((one, next) -> next)
                .map(Reading.Leakdown.class::cast)
                .map(TdcViewModel::shown)
                .orElse(cylinder == now.get() ? "now" : Tile.NOT_MEASURED);
    }

    private static String shown(Reading.Leakdown leak) {
        OptionalDouble percent = LeakReading.percent(leak);
        return percent.isPresent() ? Figures.percent(percent.getAsDouble(), 0) : ReadingAsTyped.value(leak);
    }

    /** The supply the pushes are told for: that of the last leak-down reading, else of the reference tester. */
    public String supply() {
        return figures().of(supplyPascal(), Shown.COMPRESSION);
    }

    private double supplyPascal() {
        return session.session().readings().stream()
                .filter(Reading.Leakdown.class::isInstance)
                .map(reading -> ((Reading.Leakdown) reading).supply())
                .flatMap(Optional::stream)
                .reduce((one, next) -> next)
                .map(Quantity::si)
                .orElse(LeakTester.referenceSupply());
    }

    /** How hard that supply pushes on the crank off top dead centre. */
    public List<Push> pushes() {
        return OFF.stream().map(this::push).toList();
    }

    private Push push(int degrees) {
        double torque = TdcWords.torque(engine(), supplyPascal(), degrees);
        UnitSystem other = figures().system() == UnitSystem.US ? UnitSystem.METRIC : UnitSystem.US;
        return new Push(degrees + "°", figures().of(torque, Shown.TORQUE), new Figures(other).of(torque, Shown.TORQUE));
    }

    /** Whose measures the pushes are computed from. */
    public String measures() {
        return "measures " + (engine().geometry().assumed() ? "assumed by" : "of") + " the profile, friction left out";
    }
}
