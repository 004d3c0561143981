package org.pullproof.testing;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.pullproof.advice.Appraisal;
import org.pullproof.advice.NextStep;
import org.pullproof.advice.Stage;
import org.pullproof.advice.StageProgress;
import org.pullproof.car.Access;
import org.pullproof.car.Car;
import org.pullproof.car.Fact;
import org.pullproof.changes.Call;
import org.pullproof.changes.Change;
import org.pullproof.changes.ChangeLedger;
import org.pullproof.changes.JudgedChange;
import org.pullproof.changes.Settling;
import org.pullproof.changes.Unjudged;
import org.pullproof.dyno.DynoDay;
import org.pullproof.dyno.DynoFindings;
import org.pullproof.dyno.PowerCurve;
import org.pullproof.dyno.Pull;
import org.pullproof.dyno.PullFile;
import org.pullproof.dyno.PullFindings;
import org.pullproof.dyno.Trace;
import org.pullproof.engine.Bank;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.FiringOrder;
import org.pullproof.engine.FuelSystem;
import org.pullproof.engine.Geometry;
import org.pullproof.engine.Ignition;
import org.pullproof.engine.Known;
import org.pullproof.engine.Layout;
import org.pullproof.engine.PlugSpec;
import org.pullproof.engine.Rotor;
import org.pullproof.engine.Setup;
import org.pullproof.health.AirPlace;
import org.pullproof.health.Conditions;
import org.pullproof.health.FaultFindings;
import org.pullproof.health.HealthFindings;
import org.pullproof.health.HealthFindings.CylinderFindings;
import org.pullproof.health.HealthFindings.State;
import org.pullproof.health.HealthFindings.Verdict;
import org.pullproof.health.Reading;
import org.pullproof.health.TestKind;
import org.pullproof.session.Note;
import org.pullproof.session.Session;
import org.pullproof.tuneup.Afterwards;
import org.pullproof.tuneup.Outfit;
import org.pullproof.tuneup.PartsToBuy;
import org.pullproof.tuneup.PlugRecord;
import org.pullproof.tuneup.Step;
import org.pullproof.tuneup.TuneUp;
import org.pullproof.tuneup.TuneUpFindings;
import org.pullproof.units.Figures;
import org.pullproof.units.Money;
import org.pullproof.units.Quantity;
import org.pullproof.units.Sentence;
import org.pullproof.units.Unit;
import org.pullproof.units.UnitSystem;
import org.pullproof.weather.AirPart;
import org.pullproof.weather.AirReading;
import org.pullproof.weather.Factor;
import org.pullproof.weather.PullAir;
import org.pullproof.weather.Standard;
import org.pullproof.worth.MoneyBook;
import org.pullproof.worth.Option;
import org.pullproof.worth.Spending;
import org.pullproof.worth.WorthFindings;

/**
 * An invented car at the end of its job, written by hand: what the rooms would say of it is made up here, so that a test of
 * the report or of a screen needs none of them.
 */
public final class GreyCoupe {
    private static final LocalDateTime READ = LocalDateTime.of(2026, 6, 13, 10, 5);
    private static final LocalDateTime PULLED = LocalDateTime.of(2026, 6, 14, 13, 45);
    private static final int FIRST_RPM = 2000;
    private static final int LAST_RPM = 5200;

    private GreyCoupe() {}

    /** Everything the report can tell. */
    public static Appraisal appraisal() {
        return appraisal(session(), "Tighten the plugs once more after the first heat cycle.");
    }

    /** The same car with words of one's own in places that people fill. */
    public static Appraisal appraisalSaying(String words) {
        Session session = session()
                .withCar(new Car(words, Map.of(Fact.IDENTITY, words)))
                .withNotes(List.of(new Note(READ, words)));
        return appraisal(session, words);
    }

    /** A car of which only the engine is known. */
    public static Appraisal untouched() {
        Session session = Session.begin("Blue wagon", profile());
        return new Appraisal(
                session,
                new Figures(UnitSystem.US),
                new Sentence("Say what the owner permits."),
                new HealthFindings(
                        Verdict.NOT_SETTLED,
                        new Sentence("**Not settled.** Nothing is measured yet."),
                        List.of(),
                        List.of(),
                        List.of(TestKind.COMPRESSION_DRY),
                        OptionalDouble.empty(),
                        List.of(),
                        IntStream.rangeClosed(1, 8)
                                .mapToObj(GreyCoupe::unmeasured)
                                .toList(),
                        List.of(),
                        FaultFindings.none()),
                new TuneUpFindings(
                        new Sentence("**Not begun.**"),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        new TuneUpFindings.Plan(Map.of(), List.of(), 0),
                        List.of(),
                        List.of(),
                        List.of(),
                        new PartsToBuy(List.of()),
                        new TuneUpFindings.Settings(List.of(), Optional.empty(), List.of()),
                        new Afterwards(List.of(), List.of(), Optional.empty())),
                new DynoFindings(
                        new Sentence("**No pull yet.**"),
                        List.of(),
                        List.of(),
                        OptionalInt.empty(),
                        OptionalInt.empty(),
                        false,
                        Optional.empty(),
                        Optional.empty()),
                noChange(),
                Moneys.of(session, noChange(), OptionalDouble.empty()),
                Gates.open(),
                nextStep("Balance, cylinder by cylinder"),
                List.of());
    }

    private static ChangeLedger noChange() {
        return new ChangeLedger(
                new Sentence("**No change yet.**"),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0,
                false,
                List.of(),
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                Map.of());
    }

    /** The same car with something else in its session. */
    public static Appraisal appraise(Session session) {
        return appraisal(session, "");
    }

    private static Appraisal appraisal(Session session, String remark) {
        return new Appraisal(
                session,
                new Figures(UnitSystem.US),
                new Sentence("**Your own**, runs; price asked $1,400."),
                health(remark),
                tuneUp(remark),
                dyno(session),
                changes(session),
                worth(session),
                Gates.open(),
                nextStep("Two more control pulls at base"),
                List.of(new StageProgress(Stage.HEALTH, StageProgress.Progress.DONE, "eight of eight level")));
    }

    /** A V8 with two banks and a distributor. */
    public static EngineProfile profile() {
        return new EngineProfile(
                "v8-test",
                "V8 90°, odd and even banks",
                Layout.V,
                90,
                List.of(new Bank("left", List.of(1, 3, 5, 7), true), new Bank("right", List.of(2, 4, 6, 8), false)),
                new FiringOrder(List.of(1, 8, 4, 3, 6, 5, 7, 2), List.of(90, 90, 90, 90, 90, 90, 90, 90)),
                Rotor.CLOCKWISE,
                new Geometry(0.1, 0.0885, 0.15, 9.0, 60, true),
                new PlugSpec(
                        Quantity.parse("0.035in", Unit.IN),
                        Quantity.parse("0.045in", Unit.IN),
                        Quantity.parse("15lb-ft", Unit.LB_FT),
                        Quantity.parse("22lb-ft", Unit.LB_FT),
                        "14 mm, tapered seat"),
                Ignition.DISTRIBUTOR,
                FuelSystem.CARBURETTOR,
                false,
                Known.NOT_KNOWN,
                "v8-test",
                List.of("common practice, no source"));
    }

    /** What was typed. */
    public static Session session() {
        return Session.begin("Grey coupé", profile())
                .withCar(Car.named("Grey coupé")
                        .with(Fact.ACCESS, "own-it")
                        .with(Fact.RUNS, "yes")
                        .with(Fact.ODOMETER, "84300mi")
                        .with(Fact.ELEVATION, "250m")
                        .with(Fact.PRICE, "1400USD")
                        .with(Fact.SMALLEST_DIFFERENCE, "1%"))
                .withReadings(readings())
                .withTuneUp(
                        TuneUp.notBegun().withDone("a", READ).withPlug(plug(1)).withPlug(plug(2)))
                .withSetups(setups(), "timing-32", steps())
                .withDays(List.of(new DynoDay(PULLED.toLocalDate(), List.of(air()), pulls())))
                .withMoney(new MoneyBook(
                        List.of(new Spending("plugs and wires", Money.of(96, "USD"), LocalDate.of(2026, 6, 12))),
                        List.of(headWork())))
                .withNotes(List.of(new Note(READ, "Battery on the charger during the cranking tests.")));
    }

    private static List<Reading> readings() {
        List<Reading> readings = new ArrayList<>();
        readings.add(compression(6, "92"));
        readings.add(new Reading.Work(OptionalInt.of(6), "lash-set", Conditions.notRecorded(), READ, ""));
        for (int cylinder = 1; cylinder <= 8; cylinder++) {
            readings.add(compression(cylinder, String.valueOf(153 + cylinder)));
            readings.add(new Reading.Leakdown(
                    OptionalInt.of(cylinder),
                    new Reading.Leak.Percentage(Quantity.parse(6 + cylinder + "%", Unit.PERCENT)),
                    Optional.of(Quantity.parse("80psi", Unit.PSI)),
                    Optional.of(Quantity.parse("0.040in", Unit.IN)),
                    Optional.of(Set.of(AirPlace.CRANKCASE)),
                    1,
                    Conditions.notRecorded(),
                    READ,
                    ""));
        }
        readings.add(new Reading.Sign(
                TestKind.OIL_PRESSURE,
                OptionalInt.empty(),
                Optional.of(Quantity.parse("24psi", Unit.PSI)),
                Optional.empty(),
                Conditions.notRecorded(),
                READ,
                "hot idle, 700 rpm"));
        return readings;
    }

    private static Reading compression(int cylinder, String psi) {
        Conditions conditions = new Conditions(
                OptionalInt.of(6),
                Optional.of(Conditions.Throttle.OPEN),
                Optional.of(Conditions.Plugs.ALL_OUT),
                Optional.of(Conditions.Warmth.WARM),
                Optional.of(Quantity.parse("10.6V", Unit.VOLT)),
                Optional.empty(),
                Optional.empty(),
                Optional.of("gauge 1"),
                Optional.of(Quantity.parse("1psi", Unit.PSI)));
        return new Reading.Compression(
                OptionalInt.of(cylinder),
                false,
                Quantity.parse(psi + "psi", Unit.PSI),
                Optional.of(Quantity.parse("70psi", Unit.PSI)),
                1,
                conditions,
                READ,
                "");
    }

    private static HealthFindings health(String reason) {
        return new HealthFindings(
                Verdict.SOUND,
                new Sentence("**Yes.** All eight cylinders agree within 5 %, leak 7 to 14 %; oil 24 psi hot idle."),
                List.of("Cylinder 6 read 92 psi before its lash was set, 159 psi after it.", reason),
                List.of("Cranking speed was not recorded: the readings are taken as alike in it."),
                List.of(),
                OptionalDouble.of(4.3),
                List.of(
                        new HealthFindings.Rule(
                                "lowest at least 75 % of the highest",
                                true, "common practice, no source", "lowest 154 psi is 96 % of the highest, 161 psi"),
                        new HealthFindings.Rule(
                                "spread under 3 %", false, "common practice, no source", "spread is 4.3 %")),
                IntStream.rangeClosed(1, 8).mapToObj(GreyCoupe::level).toList(),
                List.of(),
                FaultFindings.none());
    }

    private static CylinderFindings level(int cylinder) {
        return new CylinderFindings(
                cylinder,
                State.LEVEL,
                cylinder == 6 ? "level since lash set" : "level",
                Optional.of(Quantity.parse(153 + cylinder + "psi", Unit.PSI)),
                OptionalDouble.empty(),
                Optional.of(Quantity.parse("70psi", Unit.PSI)),
                Optional.empty(),
                OptionalInt.of(6),
                OptionalDouble.of(6 + cylinder),
                Optional.of(6 + cylinder + " %"),
                OptionalDouble.of(0.07),
                OptionalDouble.of(8 + cylinder),
                Set.of(AirPlace.CRANKCASE),
                OptionalDouble.of(100 + cylinder),
                OptionalDouble.of(12.5),
                Optional.of("normal"),
                cylinder == 6 ? List.of("dry 92 psi, before the lash was set.") : List.of());
    }

    private static CylinderFindings unmeasured(int cylinder) {
        return new CylinderFindings(
                cylinder,
                State.NOT_MEASURED,
                "not measured",
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalInt.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Set.of(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                List.of());
    }

    private static PlugRecord plug(int cylinder) {
        return new PlugRecord(
                cylinder,
                Optional.of(Quantity.parse("0.052in", Unit.IN)),
                Optional.of(Quantity.parse("0.040in", Unit.IN)),
                Optional.empty());
    }

    private static TuneUpFindings tuneUp(String caution) {
        Step off = new Step(
                "a",
                "Battery lead off",
                List.of(),
                List.of(),
                List.of("battery lead"),
                List.of(),
                List.of("battery lead"),
                5,
                Money.of(0, "USD"),
                List.of(caution),
                Step.Heat.ANY,
                Step.Kind.WORK,
                Outfit.NONE);
        Step gate = new Step(
                "n",
                "Everything back, start",
                List.of("a"),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                10,
                Money.of(0, "USD"),
                List.of(),
                Step.Heat.ANY,
                Step.Kind.START_GATE,
                Outfit.NONE);
        return new TuneUpFindings(
                new Sentence("**Not yet.** One of two steps is done; the battery lead is off the car."),
                List.of(
                        new TuneUpFindings.StepState(off, TuneUpFindings.State.DONE, List.of()),
                        new TuneUpFindings.StepState(gate, TuneUpFindings.State.NOW, List.of())),
                List.of(new TuneUpFindings.OffCar(
                        "battery lead", Optional.of("a"), READ, "", Optional.empty(), Optional.empty())),
                List.of(new TuneUpFindings.Block(
                        "battery lead: off the car", Optional.of("a"), Optional.of("battery lead"))),
                List.of(
                        new TuneUpFindings.PlugFinding(plug(1), Optional.of("old gap over the range")),
                        new TuneUpFindings.PlugFinding(plug(2), Optional.empty())),
                new TuneUpFindings.Plan(Map.of(), List.of(), 10),
                List.of(),
                List.of(),
                List.of(),
                new PartsToBuy(List.of()),
                new TuneUpFindings.Settings(List.of(), Optional.empty(), List.of()),
                new Afterwards(List.of(), List.of(), Optional.empty()));
    }

    private static List<Setup> setups() {
        return List.of(
                Setup.named("base", "base"),
                new Setup("timing-32", "timing 32°", Map.of("timing", Quantity.parse("32°", Unit.DEGREE)), ""),
                Setup.named("jets", "jets up"));
    }

    private static List<Change> steps() {
        return List.of(
                new Change(
                        "base",
                        "timing-32",
                        "Total timing 26° → 32°",
                        PULLED,
                        Optional.of(Money.of(20, "USD")),
                        Set.of()),
                new Change(
                        "timing-32",
                        "jets",
                        "Main jets two sizes up",
                        PULLED.plusMinutes(40),
                        Optional.empty(),
                        Set.of()));
    }

    private static AirReading air() {
        return new AirReading(
                PULLED.minusMinutes(5),
                Quantity.parse("98.6kPa", Unit.KPA),
                Quantity.parse("27C", Unit.CELSIUS),
                Quantity.parse("55%", Unit.PERCENT));
    }

    private static Factor factor() {
        return new Factor(Standard.SAE_J1349, 1.033, List.of(new AirPart.Width(AirPart.PRESSURE, 0.003)), List.of());
    }

    private static List<Pull> pulls() {
        return List.of(
                pull("base", 1, 0, Optional.empty()),
                pull("timing-32", 1, 12, Optional.empty()),
                pull("jets", 1, 24, Optional.empty()),
                pull("base", 2, 36, Optional.of("lifted at 4,000 rpm")));
    }

    private static Pull pull(String setup, int number, int minutes, Optional<String> excluded) {
        String name = setup + "-" + number + ".csv";
        return new Pull(
                setup,
                number,
                new PullFile(name, name, "0123456789abcdef".repeat(4)),
                PULLED.plusMinutes(minutes),
                List.of(),
                Optional.empty(),
                excluded);
    }

    private static DynoFindings dyno(Session session) {
        List<PullFindings> pulls = session.days().stream()
                .flatMap(day -> day.pulls().stream())
                .map(GreyCoupe::findings)
                .toList();
        return new DynoFindings(
                new Sentence("It makes **207.3 hp** at the wheels over 2,600 to 5,000 rpm, SAE J1349, ± 1.6."),
                pulls,
                List.of(
                        new DynoFindings.SetupPower("base", 1, 150, true),
                        new DynoFindings.SetupPower("timing-32", 1, 154.6, true),
                        new DynoFindings.SetupPower("jets", 1, 152.4, true)),
                OptionalInt.of(2600),
                OptionalInt.of(5000),
                false,
                Optional.of(air()),
                Optional.of(factor()));
    }

    private static PullFindings findings(Pull pull) {
        double height = switch (pull.setup()) {
            case "timing-32" -> 1.031;
            case "jets" -> 1.016;
            default -> 1;
        };
        int points = (LAST_RPM - FIRST_RPM) / PowerCurve.STEP + 1;
        double[] rpm = IntStream.range(0, points)
                .mapToDouble(i -> FIRST_RPM + i * PowerCurve.STEP)
                .toArray();
        double[] watt = IntStream.range(0, points)
                .mapToDouble(i -> 155_000 * height * Math.sin(Math.PI / 2 * rpm[i] / 4900))
                .toArray();
        return new PullFindings(
                pull,
                pull.setup() + "-" + pull.number(),
                Trace.of(rpm, watt),
                PowerCurve.of(FIRST_RPM, watt),
                PullAir.at(pull.time(), List.of(air())),
                Optional.of(factor()),
                155 * height,
                4900,
                OptionalDouble.of(145 * height),
                pull.excluded().isPresent() ? List.of("lift: the power falls at 4,000 rpm") : List.of());
    }

    private static ChangeLedger changes(Session session) {
        JudgedChange timing = new JudgedChange(
                "base → timing 32°",
                "base",
                "timing-32",
                true,
                Optional.of(session.changes().get(0)),
                150,
                154.6,
                3.1,
                2.2,
                4.0,
                4.6,
                3.3,
                6.0,
                Call.GAIN,
                true,
                Settling.DONE,
                Optional.empty(),
                "Between +2.2 and +4.0 %. +6.2 hp at the wheels (+4.4 to +8.0), SAE J1349. Holds allowing for both changes tried.");
        JudgedChange jets = new JudgedChange(
                "timing 32° → jets up",
                "timing-32",
                "jets",
                true,
                Optional.of(session.changes().get(1)),
                154.6,
                152.4,
                -1.4,
                -2.5,
                -0.3,
                -2.2,
                -3.9,
                -0.5,
                Call.LOSS,
                false,
                Settling.DONE,
                Optional.empty(),
                "Between −2.5 and −0.3 %. −2.9 hp at the wheels (−5.2 to −0.6), SAE J1349.");
        return new ChangeLedger(
                new Sentence("**Timing at 32°**, +3.1 % (+2.2 to +4.0)."),
                OptionalDouble.of(0.4),
                OptionalDouble.of(-0.05),
                11,
                false,
                List.of(timing, jets),
                List.of(new Unjudged(
                        "base → duct fitted",
                        "base",
                        "duct",
                        true,
                        Optional.empty(),
                        Call.NO_CALL,
                        "No pull of duct fitted counts yet.")),
                Optional.empty(),
                List.of(new ChangeLedger.Residual("base-1", "base", 0.2, 0)),
                List.of(),
                List.of(),
                Map.of());
    }

    private static Option headWork() {
        return new Option(
                "one head, valve job",
                Money.of(300, "USD"),
                Money.of(450, "USD"),
                Money.of(800, "USD"),
                9,
                Optional.of(new Option.Gain(0, 2, 4)),
                true);
    }

    private static WorthFindings worth(Session session) {
        return Moneys.of(session, changes(session), OptionalDouble.of(150));
    }

    private static NextStep nextStep(String action) {
        return new NextStep(
                action,
                "The drift of the day is not told apart from the last change.",
                "Whether the loss with the bigger jets is real.",
                20,
                Money.of(0, "USD"),
                Access.DRIVE_IT,
                Stage.CHANGES,
                List.of("Exhaust gas kills indoors: extraction on and a CO alarm in the room."));
    }
}
