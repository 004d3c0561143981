package org.pullproof.simulation.faults;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.pullproof.engine.Geometry;
import org.pullproof.health.AirPlace;
import org.pullproof.health.faults.CylinderReadings;
import org.pullproof.health.faults.Drops;
import org.pullproof.health.faults.EngineReadings;
import org.pullproof.health.faults.EngineState;
import org.pullproof.health.faults.Fault;
import org.pullproof.health.faults.FaultConstants;
import org.pullproof.health.faults.Gauge;
import org.pullproof.health.faults.Leak;
import org.pullproof.health.faults.Odds;
import org.pullproof.health.faults.Pair;
import org.pullproof.health.hole.GaugeTest;
import org.pullproof.health.leakdown.LeakTester;

/** Measures an invented engine the way a person does: with scatter, rounding, blunders, and ears that miss and mishear. */
final class Bench {
    private static final double PSI = 6894.757;
    private static final int STROKES = 6;

    private final InventedEngine engine;
    private final Dice dice;
    private final FaultConstants constants;
    private final OtherPhysics physics;
    private final double atRest;
    private final double spoiled;
    private final double oilStays;
    private final double leakLeft;

    Bench(InventedEngine engine, Dice dice, FaultConstants constants) {
        this.engine = engine;
        this.dice = dice;
        this.constants = constants;
        this.physics = new OtherPhysics(
                engine.boreM, engine.strokeM, 1.65 * engine.strokeM, engine.ratio, engine.closing, engine.air);
        this.atRest = dice.factor(0.2);
        this.spoiled = engine.kind == Kind.SPOILED ? Math.exp(-dice.between(0.15, 0.4)) : 1;
        this.oilStays = dice.between(0.25, 0.9);
        this.leakLeft = dice.between(0.22, 0.6);
    }

    /** Everything read. */
    EngineReadings all() {
        double[] full = {dice.between(45, 130), dice.between(0.02, 0.08), dice.between(0.02, 0.13), 1 + dice.below(2)};
        List<CylinderReadings> cylinders = new ArrayList<>();
        for (int i = 0; i < engine.cylinders(); i++) {
            cylinders.add(read(i + 1, engine.bores.get(i), full));
        }
        return new EngineReadings(cylinders, pairs(), told(), false, odds());
    }

    private Geometry told() {
        return new Geometry(
                engine.boreM, engine.strokeM, 1.65 * engine.strokeM, engine.tellRatio, engine.tellClosing, false);
    }

    private List<Pair> pairs() {
        List<Pair> pairs = new ArrayList<>();
        for (int number = 1; number < engine.cylinders(); number++) {
            if (number % engine.inBank != 0) {
                pairs.add(Pair.of(number, number + 1));
            }
        }
        return pairs;
    }

    private CylinderReadings read(int number, Bore bore, double[] full) {
        double[] dry = physics.crank(bore.ringMm2(), bore.holeMm2(), bore.filling(), engine.rpm, STROKES, 0);
        double first = dry[0] * dice.factor(0.06) * (bore.fault() == Fault.RINGS ? 0.9 : 1);
        double last = dry[1] * dice.factor(0.02);
        double[] wet = physics.crank(
                bore.ringMm2() * wetLeak(bore),
                bore.holeMm2() * (bore.fault() == Fault.PISTON ? dice.between(0.75, 1) : 1),
                bore.filling(),
                engine.rpm,
                STROKES,
                5 * oilStays * dice.factor(0.1));
        return new CylinderReadings(
                number,
                Optional.of(gauge(last)),
                Optional.of(gauge(Math.min(first, last))),
                Optional.of(gauge(wet[1] * dice.factor(0.02))),
                Optional.of(leak(bore)),
                Optional.of(drops(bore, full)),
                Optional.of(plug(bore.fault())),
                Map.of());
    }

    private double wetLeak(Bore bore) {
        return Math.min(1, leakLeft * (bore.fault() == Fault.RINGS ? dice.between(0.6, 1.6) : 1));
    }

    private Gauge gauge(double pascal) {
        double psi = pascal * engine.gauge * spoiled / PSI;
        double read = dice.chance(0.006) ? psi * dice.between(0.3, 1.3) : psi;
        double shown = Math.max(2.5, 2.5 * Math.round(read / 2.5));
        return new Gauge(
                shown * PSI,
                OptionalDouble.of(2.5 * PSI),
                OptionalDouble.empty(),
                new GaugeTest(engine.air, constants.cranking().rpm(), STROKES));
    }

    private Leak leak(Bore bore) {
        double rest = atRest * dice.factor(0.3);
        double percent = physics.leakPercent(bore.ringMm2() * rest, bore.holeMm2() * rest) + dice.normal(0, 2);
        double read = dice.chance(0.006) ? dice.between(2, 98) : percent;
        double shown = Math.max(0, Math.min(100, Math.round(read)));
        return new Leak(
                Optional.of(new Leak.Range(shown, shown)),
                Optional.of(heard(bore, physics.grams(bore.ringMm2() * rest, bore.holeMm2() * rest))),
                LeakTester.withRestrictor(90 * PSI, 0.001, engine.air));
    }

    private Set<AirPlace> heard(Bore bore, double[] grams) {
        Map<AirPlace, Double> flows = new EnumMap<>(AirPlace.class);
        flows.put(AirPlace.CRANKCASE, grams[0]);
        bore.path().ifPresent(path -> flows.merge(path, grams[1], Double::sum));
        double loudest = flows.values().stream().mapToDouble(flow -> flow).max().orElse(0);
        Set<AirPlace> heard = EnumSet.noneOf(AirPlace.class);
        for (AirPlace place : AirPlace.values()) {
            double flow = flows.getOrDefault(place, 0.0);
            double half = 1.2 * constants.hearing().half().get(place);
            double masked = flow * 6 < loudest ? 0.6 : 1;
            double ear = flow <= 0 ? 0 : masked * 0.95 / (1 + Math.pow(half / flow, 2.4));
            if (dice.chance(ear) || dice.chance(0.012)) {
                heard.add(place);
            }
        }
        return heard;
    }

    /** Full drop, scatter, unevenness, rounds. */
    private Drops drops(Bore bore, double[] full) {
        double own = full[0] * bore.idle() * (1 + dice.normal(0, full[2]));
        int rounds = (int) full[3];
        double[] read = new double[rounds];
        double sum = 0;
        for (int i = 0; i < rounds; i++) {
            read[i] = Math.max(0, Math.round(own + dice.normal(0, full[1] * full[0])));
            sum += read[i];
        }
        double mean = sum / rounds;
        double squares = 0;
        for (double drop : read) {
            squares += (drop - mean) * (drop - mean);
        }
        return new Drops(mean, rounds, squares);
    }

    /** Other chances than the model's: each off by a factor. */
    private String plug(Fault fault) {
        List<Double> percent = constants.plugs().percent().get(fault);
        double[] weights = percent.stream()
                .mapToDouble(share -> share * dice.factor(0.5) + 0.3)
                .toArray();
        return constants.plugs().looks().get(dice.weighted(weights));
    }

    private Odds odds() {
        Map<EngineState, Double> states = new EnumMap<>(EngineState.class);
        Map<String, Map<String, Double>> ratios = constants.signs().ratios();
        String cranked = "cranked-well";
        if (engine.kind == Kind.SPOILED) {
            cranked = dice.chance(0.6) ? "throttle-closed" : "cranked-slowly";
        }
        states.put(EngineState.TEST_SPOILED, ratios.get(cranked).get("test-spoiled"));
        double low = engine.kind == Kind.RINGS_ALL ? 0.5 : engine.kind == Kind.CAM_TIMING ? 0.6 : 0.15;
        Map<String, Double> vacuum = ratios.get(dice.chance(low) ? "vacuum-low" : "vacuum-in-range");
        states.put(EngineState.RINGS_ALL, vacuum.get("rings-all"));
        states.put(EngineState.CAM_TIMING, vacuum.get("cam-timing"));
        return new Odds(states, List.of(), new LinkedHashMap<>());
    }
}
