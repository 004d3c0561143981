package org.pullproof.advice;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.pullproof.car.Car;
import org.pullproof.car.Fact;
import org.pullproof.changes.Call;
import org.pullproof.changes.ChangeLedger;
import org.pullproof.changes.JudgedChange;
import org.pullproof.changes.Settling;
import org.pullproof.dyno.DayGate;
import org.pullproof.dyno.DynoDay;
import org.pullproof.dyno.DynoFindings;
import org.pullproof.dyno.DynoFindings.SetupPower;
import org.pullproof.dyno.PowerCurve;
import org.pullproof.dyno.Pull;
import org.pullproof.dyno.PullFile;
import org.pullproof.dyno.PullFindings;
import org.pullproof.dyno.Trace;
import org.pullproof.engine.Setup;
import org.pullproof.files.TradeFiles;
import org.pullproof.health.AirPlace;
import org.pullproof.health.Conditions;
import org.pullproof.health.FaultFindings;
import org.pullproof.health.HealthFindings;
import org.pullproof.health.HealthFindings.CylinderFindings;
import org.pullproof.health.HealthFindings.State;
import org.pullproof.health.HealthFindings.Verdict;
import org.pullproof.health.Reading;
import org.pullproof.health.TestKind;
import org.pullproof.health.faults.Fault;
import org.pullproof.health.nexttest.NextTest;
import org.pullproof.health.nexttest.TestCost;
import org.pullproof.session.Session;
import org.pullproof.tuneup.TuneUp;
import org.pullproof.tuneup.TuneUpAssessor;
import org.pullproof.tuneup.TuneUpFindings;
import org.pullproof.tuneup.TuneUpSamples;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.Sentence;
import org.pullproof.units.Unit;
import org.pullproof.units.UnitSystem;
import org.pullproof.weather.PullAir;
import org.pullproof.weather.Readings;

/** Builds situations by hand, as the rooms could have found them; an invented in-line four. */
final class Situations {
    private static final LocalDateTime WHEN = LocalDateTime.of(2026, 6, 14, 13, 40);
    private static final String STEPS = "inline-coil-on-plug";

    private final Map<Fact, String> facts = new EnumMap<>(Fact.class);
    private final List<Reading> readings = new ArrayList<>();
    private final List<CylinderFindings> cylinders = new ArrayList<>();
    private final List<String> pulls = new ArrayList<>();
    private final List<JudgedChange> changes = new ArrayList<>();
    private Verdict verdict = Verdict.NOT_SETTLED;
    private TuneUp tuneUp = TuneUp.notBegun();
    private final List<FaultFindings.CylinderChances> chances = new ArrayList<>();
    private final List<FaultFindings.ProposedTest> proposed = new ArrayList<>();
    private DayGate gate = DayGate.untouched();
    private String present = "base";
    private List<String> setups = List.of("base");

    private Situations() {
        every(State.NOT_MEASURED, false, false);
    }

    /** A car whose owner permits this and that runs or not: keys as typed. */
    static Situations of(String access, String runs) {
        Situations made = new Situations();
        made.facts.put(Fact.ACCESS, access);
        made.facts.put(Fact.RUNS, runs);
        return made;
    }

    static Situations nothingTold() {
        return new Situations();
    }

    Situations told(Fact fact, String text) {
        facts.put(fact, text);
        return this;
    }

    private Situations every(State state, boolean balance, boolean compression) {
        cylinders.clear();
        for (int number = 1; number <= 4; number++) {
            cylinders.add(cylinder(number, state, balance, compression, Optional.empty(), Set.of(), Optional.empty()));
        }
        return this;
    }

    /** Balance of every cylinder read and level; compression not read. */
    Situations balanced() {
        return every(State.LEVEL, true, false);
    }

    /** Balance and compression of every cylinder read and level. */
    Situations level() {
        return every(State.LEVEL, true, true);
    }

    /** Cylinder 3 stands out: low in compression or in doubt, with air heard, if leak-down was done. */
    Situations suspect(State state, Optional<String> leak, Set<AirPlace> air, Optional<String> plug) {
        cylinders.set(2, cylinder(3, state, true, true, leak, air, plug));
        return this;
    }

    /** The fault model calls cylinder 3 faulty, this fault the likeliest. */
    Situations called(Fault fault) {
        chances.add(new FaultFindings.CylinderChances(
                3, true, List.of(new FaultFindings.CandidateChance(fault, "", 0.9, List.of(), List.of()))));
        return this;
    }

    /** The fault model proposes a test. */
    Situations proposed(TestKind test, Integer... on) {
        proposed.add(new FaultFindings.ProposedTest(
                new NextTest(test, List.of(on), NextTest.Reason.WORTH_ITS_COST, 0.4, 100, new TestCost(30, 0)),
                "It is worth it."));
        return this;
    }

    /** The whole engine or a cylinder has a sign. */
    Situations sign(TestKind test, OptionalInt cylinder, String word) {
        readings.add(new Reading.Sign(
                test, cylinder, Optional.empty(), Optional.of(word), Conditions.notRecorded(), WHEN, ""));
        return this;
    }

    Situations oilPressure(String psi) {
        readings.add(new Reading.Sign(
                TestKind.OIL_PRESSURE,
                OptionalInt.empty(),
                Optional.of(Quantity.of(psi, Unit.PSI)),
                Optional.empty(),
                Conditions.notRecorded(),
                WHEN,
                ""));
        return this;
    }

    Situations wet(int cylinder) {
        readings.add(new Reading.Compression(
                OptionalInt.of(cylinder),
                true,
                Quantity.of("100", Unit.PSI),
                Optional.empty(),
                1,
                Conditions.notRecorded(),
                WHEN,
                ""));
        return this;
    }

    Situations leakdown(int cylinder) {
        readings.add(new Reading.Leakdown(
                OptionalInt.of(cylinder),
                new Reading.Leak.Percentage(Quantity.of("30", Unit.PERCENT)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                1,
                Conditions.notRecorded(),
                WHEN,
                ""));
        return this;
    }

    /** The signs of the whole engine that every owner reads. */
    Situations wholeEngine() {
        return oilPressure("25")
                .sign(TestKind.COOLANT_GAS, OptionalInt.empty(), "negative")
                .sign(TestKind.VACUUM, OptionalInt.empty(), "random-flick");
    }

    Situations verdict(Verdict next) {
        verdict = next;
        return this;
    }

    Situations tuneUp(TuneUp next) {
        tuneUp = next;
        return this;
    }

    /** Setups there are, the last of them present. */
    Situations setups(String... ids) {
        setups = List.of(ids);
        present = ids[ids.length - 1];
        return this;
    }

    Situations present(String id) {
        present = id;
        return this;
    }

    /** Pulls in order of time, by their setup. */
    Situations pulls(String... setupIds) {
        pulls.addAll(List.of(setupIds));
        return this;
    }

    Situations judged(String from, String to, Call call) {
        changes.add(new JudgedChange(
                from + " → " + to,
                from,
                to,
                true,
                Optional.empty(),
                100,
                101,
                1,
                0,
                2,
                1,
                0,
                2,
                call,
                true,
                Settling.DONE,
                Optional.empty(),
                ""));
        return this;
    }

    /** Somebody went through the gate and ticked what no reading tells. */
    Situations gatePassed() {
        gate = ticked(gate);
        return this;
    }

    Situations gate(DayGate next) {
        gate = next;
        return this;
    }

    private DayGate ticked(DayGate begun) {
        DayGate next = begun;
        for (GatePoint point : now().gate().inTheWay()) {
            next = point.state() == GatePoint.State.OPEN ? next.tick(point.key(), WHEN) : next;
        }
        return next;
    }

    Situation now() {
        Session begun = Session.begin("invented", TuneUpSamples.engine(STEPS));
        Session session = begun.withCar(new Car("invented", facts))
                .withReadings(readings)
                .withTuneUp(tuneUp)
                .withSetups(setups.stream().map(id -> Setup.named(id, id)).toList(), present, List.of())
                .withDays(days());
        TuneUpFindings tuned = new TuneUpAssessor(new TradeFiles().stepGraphs())
                .assess(tuneUp, session.profile(), new Figures(UnitSystem.US), Optional.empty());
        return new Situation(
                session,
                health(),
                tuned,
                dyno(),
                new ChangeLedger(
                        new Sentence(""),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        0,
                        false,
                        changes,
                        List.of(),
                        Optional.empty(),
                        List.of(),
                        List.of(),
                        List.of(),
                        Map.of()),
                new GateKeeper(new TradeFiles().doNotRun()).gate(session, health(), tuned));
    }

    private List<DynoDay> days() {
        return gate.isUntouched()
                ? List.of()
                : List.of(new DynoDay(WHEN.toLocalDate(), List.of(), List.of()).withGate(gate));
    }

    private HealthFindings health() {
        List<Reading> engineSigns = readings.stream()
                .filter(reading -> reading.cylinder().isEmpty())
                .toList();
        return new HealthFindings(
                verdict,
                new Sentence(""),
                List.of(),
                List.of(),
                List.of(),
                OptionalDouble.empty(),
                List.of(),
                cylinders,
                engineSigns,
                new FaultFindings(0.5, true, chances, List.of(), List.of(), proposed, "", Optional.empty()));
    }

    private DynoFindings dyno() {
        List<PullFindings> found = new ArrayList<>();
        for (String setup : pulls) {
            int number = 1
                    + (int) found.stream()
                            .filter(pull -> pull.pull().setup().equals(setup))
                            .count();
            found.add(pull(setup, number, found.size()));
        }
        List<SetupPower> powers = pulls.stream()
                .collect(Collectors.groupingBy(id -> id, LinkedHashMap::new, Collectors.counting()))
                .entrySet()
                .stream()
                .map(count -> new SetupPower(count.getKey(), count.getValue().intValue(), 100, true))
                .toList();
        return new DynoFindings(
                new Sentence(""),
                found,
                powers,
                OptionalInt.empty(),
                OptionalInt.empty(),
                false,
                Optional.empty(),
                Optional.empty());
    }

    private static PullFindings pull(String setup, int number, int place) {
        Pull pull = new Pull(
                setup,
                number,
                new PullFile("p.csv", "p.csv", "0".repeat(64)),
                WHEN.plusMinutes(5L * place),
                List.of(),
                Optional.empty(),
                Optional.empty());
        return new PullFindings(
                pull,
                pull.id(),
                Trace.of(new double[] {2000, 5000}, new double[] {80e3, 120e3}),
                PowerCurve.of(2000, new double[] {80e3}),
                PullAir.at(pull.time(), List.of(Readings.air("98.6kPa", "27C", "55%"))),
                Optional.empty(),
                120,
                5000,
                OptionalDouble.of(100),
                List.of());
    }

    private static CylinderFindings cylinder(
            int number,
            State state,
            boolean balance,
            boolean compression,
            Optional<String> leak,
            Set<AirPlace> air,
            Optional<String> plug) {
        return new CylinderFindings(
                number,
                state,
                "",
                compression ? Optional.of(Quantity.of("150", Unit.PSI)) : Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalInt.empty(),
                OptionalDouble.empty(),
                leak,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                air,
                balance ? OptionalDouble.of(80) : OptionalDouble.empty(),
                balance ? OptionalDouble.of(25) : OptionalDouble.empty(),
                plug,
                List.of());
    }
}
