package org.pullproof.health;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.pullproof.health.faults.EngineState;
import org.pullproof.health.faults.Fault;
import org.pullproof.health.faults.FaultConstants;
import org.pullproof.health.faults.Odds;
import org.pullproof.health.faults.Pair;
import org.pullproof.units.Quantity;

/** What signs of the whole engine make of prior odds, by the likelihood ratios of the trade (judgement). */
final class SignOdds {
    private final Evidence evidence;
    private final FaultConstants.Signs constants;
    private final List<Pair> pairs;
    private final List<String> names;

    SignOdds(Evidence evidence, FaultConstants.Signs constants, List<Pair> pairs) {
        this.evidence = evidence;
        this.constants = constants;
        this.pairs = pairs;
        this.names = new SignNames(evidence, constants).all();
    }

    Odds odds() {
        Map<EngineState, Double> states = new EnumMap<>(EngineState.class);
        for (EngineState state : EngineState.values()) {
            states.put(state, named(state.key()));
        }
        states.merge(EngineState.TEST_SPOILED, ratio(howCranked(), "test-spoiled"), (a, b) -> a * b);
        Map<Pair, Double> ofPairs = new LinkedHashMap<>();
        pairs.forEach(pair -> ofPairs.put(pair, of(pair)));
        return new Odds(states, evidence.cylinders().stream().map(this::of).toList(), ofPairs);
    }

    /** Product of the ratios that the signs give to a name. */
    double named(String name) {
        return names.stream().mapToDouble(sign -> ratio(sign, name)).reduce(1, (a, b) -> a * b);
    }

    private double ratio(String sign, String name) {
        return constants.ratios().getOrDefault(sign, Map.of()).getOrDefault(name, 1.0);
    }

    private Map<Fault, Double> of(int cylinder) {
        Map<Fault, Double> odds = new EnumMap<>(Fault.class);
        for (Fault fault : Fault.ofOneCylinder()) {
            if (fault != Fault.SOUND) {
                double humps = fault.leaks() ? humps(List.of(cylinder)) : 1;
                odds.put(fault, named(fault.key()) * named("every-fault") * oneValve(fault) * humps);
            }
        }
        return odds;
    }

    private double of(Pair pair) {
        return named("every-fault") * humps(List.of(pair.one(), pair.other()));
    }

    private double oneValve(Fault fault) {
        return switch (fault) {
            case IGNITION, VALVE_HELD_OPEN, EXHAUST_VALVE, INTAKE_VALVE, VALVE_NOT_OPENING ->
                named("one-valve-or-ignition");
            default -> 1;
        };
    }

    /** What starter humps say of cylinders whose compression was not read. */
    private double humps(List<Integer> cylinders) {
        List<Integer> unread = cylinders.stream()
                .filter(cylinder ->
                        !evidence.dry().containsKey(cylinder) && !evidence.wet().containsKey(cylinder))
                .toList();
        if (unread.stream().anyMatch(this::lowHump)) {
            return ratio("hump-low", "leaks");
        }
        return unread.size() == cylinders.size() && evenHumps() ? ratio("humps-even", "leaks") : 1;
    }

    private boolean lowHump(int cylinder) {
        OptionalDouble hump = hump(cylinder);
        return hump.isPresent() && hump.getAsDouble() < constants.lowHump();
    }

    private boolean evenHumps() {
        return evidence.cylinders().stream().allMatch(cylinder -> hump(cylinder).orElse(0) >= constants.evenHump());
    }

    /** Percent of the highest hump. */
    private OptionalDouble hump(int cylinder) {
        return evidence.sign(cylinder, TestKind.STARTER_CURRENT).flatMap(Reading.Sign::figure).stream()
                .mapToDouble(figure -> 100 * figure.si())
                .findFirst();
    }

    /** The worst of the weighed compression readings: throttle closed, else cranked slowly, else cranked well. */
    private String howCranked() {
        List<Conditions> made = new ArrayList<>();
        evidence.weighedDry().values().forEach(reading -> made.add(reading.conditions()));
        evidence.wet().values().forEach(reading -> made.add(reading.conditions()));
        double[] volts = made.stream()
                .flatMap(how -> how.crankingVolts().stream())
                .mapToDouble(Quantity::si)
                .toArray();
        if (throttles(made).anyMatch(Conditions.Throttle.CLOSED::equals)) {
            return "throttle-closed";
        }
        if (Arrays.stream(volts).anyMatch(value -> value < constants.slowVolts())) {
            return "cranked-slowly";
        }
        boolean open = throttles(made).anyMatch(Conditions.Throttle.OPEN::equals);
        return open && volts.length > 0 ? "cranked-well" : "not known";
    }

    private static Stream<Conditions.Throttle> throttles(List<Conditions> made) {
        return made.stream().flatMap(how -> how.throttle().stream());
    }
}
