package org.pullproof.health;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.pullproof.engine.Layout;
import org.pullproof.health.faults.CylinderReadings;
import org.pullproof.health.faults.Drops;
import org.pullproof.health.faults.EngineReadings;
import org.pullproof.health.faults.FaultConstants;
import org.pullproof.health.faults.FurtherTests;
import org.pullproof.health.faults.Gauge;
import org.pullproof.health.faults.Leak;
import org.pullproof.health.faults.Pair;
import org.pullproof.health.faults.Part;
import org.pullproof.health.hole.GaugeTest;
import org.pullproof.health.leakdown.LeakTester;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;

/** Hands the readings that count to the fault model: in SI units, with what was not recorded taken from its constants. */
final class WeighedReadings {
    private final Evidence evidence;
    private final FaultConstants constants;

    WeighedReadings(Evidence evidence, FaultConstants constants) {
        this.evidence = evidence;
        this.constants = constants;
    }

    EngineReadings all() {
        return new EngineReadings(
                evidence.cylinders().stream().map(this::of).toList(),
                pairs(),
                evidence.profile().geometry(),
                evidence.profile().layout() == Layout.FLAT,
                new SignOdds(evidence, constants.signs(), pairs()).odds());
    }

    private List<Pair> pairs() {
        List<Pair> pairs = new ArrayList<>();
        evidence.profile().banks().forEach(bank -> {
            List<Integer> standing = bank.cylinders();
            for (int i = 1; i < standing.size(); i++) {
                pairs.add(Pair.of(standing.get(i - 1), standing.get(i)));
            }
        });
        return pairs;
    }

    private CylinderReadings of(int cylinder) {
        Optional<Reading.Compression> dry =
                Optional.ofNullable(evidence.weighedDry().get(cylinder));
        return new CylinderReadings(
                cylinder,
                dry.map(reading -> gauge(reading, Reading.Compression::gauge)),
                dry.filter(reading -> reading.first().isPresent())
                        .map(reading -> gauge(reading, read -> read.first().orElseThrow())),
                Optional.ofNullable(evidence.wet().get(cylinder))
                        .map(reading -> gauge(reading, Reading.Compression::gauge)),
                Optional.ofNullable(evidence.leakReadings().get(cylinder)).map(this::leak),
                drops(cylinder),
                evidence.word(cylinder, TestKind.PLUG),
                found(cylinder));
    }

    private Gauge gauge(Reading.Compression reading, Function<Reading.Compression, Quantity> value) {
        Conditions how = reading.conditions();
        return new Gauge(
                value.apply(reading).si(),
                how.gaugeStep().stream().mapToDouble(Quantity::si).findFirst(),
                how.oil().stream().mapToDouble(oil -> oil.in(Unit.ML)).findFirst(),
                new GaugeTest(
                        station(reading),
                        how.crankingRpm()
                                .map(speed -> speed.in(Unit.RPM))
                                .orElse(constants.cranking().rpm()),
                        how.strokes().orElse(constants.cranking().strokes())));
    }

    private double station(Reading reading) {
        return evidence.station(reading).orElse(LeakTester.STANDARD_AIR);
    }

    private Leak leak(Reading.Leakdown reading) {
        double supply = reading.supply()
                .map(Quantity::si)
                .orElse(Unit.PSI.toSi(constants.leakDown().supplyPsi()));
        double restrictor =
                reading.orifice().map(Quantity::si).orElse(constants.leakDown().restrictorMm() / 1e3);
        Optional<Leak.Range> percent = reading.cylinder().stream()
                .mapToObj(cylinder -> Optional.ofNullable(evidence.leaks().get(cylinder)))
                .flatMap(Optional::stream)
                .map(leak -> new Leak.Range(leak.fromPercent(), leak.toPercent()))
                .findFirst();
        return new Leak(percent, reading.air(), LeakTester.withRestrictor(supply, restrictor, station(reading)));
    }

    private Optional<Drops> drops(int cylinder) {
        List<Double> rounds = evidence.drops().rounds().getOrDefault(cylinder, List.of());
        if (rounds.isEmpty()) {
            return Optional.empty();
        }
        double mean = rounds.stream().mapToDouble(drop -> drop).average().orElseThrow();
        double squares = rounds.stream()
                .mapToDouble(drop -> (drop - mean) * (drop - mean))
                .sum();
        return Optional.of(new Drops(mean, rounds.size(), squares));
    }

    private Map<Part, Integer> found(int cylinder) {
        Map<Part, Integer> found = new EnumMap<>(Part.class);
        for (Part part : List.of(Part.LASH, Part.COIL_SWAP, Part.BORESCOPE)) {
            evidence.word(cylinder, part.test())
                    .flatMap(word -> FurtherTests.outcome(part, word))
                    .ifPresent(outcome -> found.put(part, outcome));
        }
        running(cylinder).ifPresent(outcome -> found.put(Part.RUNNING, outcome));
        return found;
    }

    /** Running compression is low beside the highest of the others; one alone says nothing. */
    private Optional<Integer> running(int cylinder) {
        Optional<Double> own = running(cylinder, Quantity::si);
        OptionalDouble highest = evidence.cylinders().stream()
                .filter(other -> other != cylinder)
                .flatMap(other -> running(other, Quantity::si).stream())
                .mapToDouble(pressure -> pressure)
                .max();
        if (own.isEmpty() || highest.isEmpty()) {
            return Optional.empty();
        }
        boolean low = 100 * own.get() < constants.furtherTests().lowRunning() * highest.getAsDouble();
        return Optional.of(low ? FurtherTests.POSITIVE : FurtherTests.NEGATIVE);
    }

    private <T> Optional<T> running(int cylinder, Function<Quantity, T> value) {
        return evidence.sign(cylinder, TestKind.RUNNING_COMPRESSION)
                .flatMap(Reading.Sign::figure)
                .map(value);
    }
}
