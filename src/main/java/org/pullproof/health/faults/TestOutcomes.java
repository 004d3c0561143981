package org.pullproof.health.faults;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import org.pullproof.health.TestKind;
import org.pullproof.health.hole.GaugeTest;
import org.pullproof.health.leakdown.LeakTester;
import org.pullproof.units.Unit;

/**
 * What tests that a cylinder has not had may find, by exact sums: each class of outcome is taken as a reading and weighed with
 * everything else held (section 7 of the method).
 */
public final class TestOutcomes {
    private final FaultPosterior posterior;
    private final FaultConstants constants;
    private final Likelihoods likelihoods;
    private final FurtherTests further;
    private final Map<LeakTester, LeakOutcomes> leakOutcomes = new LinkedHashMap<>();

    public TestOutcomes(FaultPosterior posterior) {
        this.posterior = posterior;
        this.constants = posterior.constants();
        this.likelihoods = posterior.joint().likelihoods();
        this.further = new FurtherTests(constants.furtherTests());
    }

    /** Empty for a test that the cylinder has had, or that cannot be judged yet. */
    public Optional<Outcomes> of(int cylinder, TestKind test) {
        CylinderReadings read = posterior.readings().cylinders().get(cylinder - 1);
        boolean had = read.parts().stream().anyMatch(part -> part.test() == test);
        return had ? Optional.empty() : notHad(cylinder, read, test);
    }

    private Optional<Outcomes> notHad(int cylinder, CylinderReadings read, TestKind test) {
        return switch (test) {
            case COMPRESSION_DRY -> Optional.of(dry(cylinder, read));
            case COMPRESSION_WET -> read.dry().map(gauge -> wet(cylinder, read, gauge));
            case LEAKDOWN -> Optional.of(leakdown(cylinder));
            case BALANCE -> Optional.of(balance(cylinder));
            case PLUG -> Optional.of(plug(cylinder));
            case COOLANT_GAS -> Optional.of(coolantGas(cylinder));
            case LASH, COIL_SWAP, RUNNING_COMPRESSION, BORESCOPE ->
                Part.ofWord(test).map(part -> word(cylinder, part));
            default -> Optional.empty();
        };
    }

    private Outcomes wet(int cylinder, CylinderReadings read, Gauge dry) {
        Likelihoods withOil = likelihoods.withOil(posterior.readings().flat());
        List<Map<Candidate, Double>> found = new ArrayList<>();
        for (double gain : constants.furtherTests().wetGains()) {
            Gauge gauge = new Gauge(dry.pascal() * gain, dry.stepPascal(), OptionalDouble.empty(), dry.how());
            CylinderLikelihood changed = posterior
                    .joint()
                    .likelihood(cylinder)
                    .withChambers(withOil.chambers(read.withWet(gauge), Set.of()));
            found.add(posterior.alone(cylinder).chancesWithOil(changed, withOil.grid()));
        }
        return outcomes(cylinder, found);
    }

    private Outcomes dry(int cylinder, CylinderReadings read) {
        GaugeTest how = howOthersWereRead();
        double middle = middleOfOthers(cylinder, how);
        List<Map<Candidate, Double>> found = new ArrayList<>();
        for (double share : constants.furtherTests().dryShares()) {
            Gauge gauge = new Gauge(middle * share, OptionalDouble.empty(), OptionalDouble.empty(), how);
            found.add(chances(cylinder, read.withDry(gauge), Part.DRY));
        }
        return outcomes(cylinder, found);
    }

    private GaugeTest howOthersWereRead() {
        return posterior.readings().cylinders().stream()
                .flatMap(one -> one.dry().or(one::wet).stream())
                .map(Gauge::how)
                .findFirst()
                .orElse(new GaugeTest(
                        LeakTester.STANDARD_AIR,
                        constants.cranking().rpm(),
                        constants.cranking().strokes()));
    }

    private double middleOfOthers(int cylinder, GaugeTest how) {
        double[] others = posterior.readings().cylinders().stream()
                .filter(one -> one.number() != cylinder)
                .flatMap(one -> one.dry().stream())
                .mapToDouble(Gauge::pascal)
                .sorted()
                .toArray();
        int half = others.length / 2;
        if (others.length == 0) {
            return Math.exp(
                    likelihoods.tables().dry(how).lnLast(constants.level().tightMm2()));
        }
        return others.length % 2 == 1 ? others[half] : (others[half - 1] + others[half]) / 2;
    }

    private Map<Candidate, Double> chances(int cylinder, CylinderReadings readings, Part part) {
        CylinderLikelihood before = posterior.joint().likelihood(cylinder);
        return posterior.alone(cylinder).chances(likelihoods.changed(before, readings, part, false));
    }

    private Outcomes balance(int cylinder) {
        List<Map<Candidate, Double>> found = new ArrayList<>();
        for (double share : constants.furtherTests().dropShares()) {
            Drops drops = new Drops(share * likelihoods.balance().typicalDrop(), 1, 0);
            found.add(posterior
                    .alone(cylinder)
                    .chances(posterior
                            .joint()
                            .likelihood(cylinder)
                            .withLefts(likelihoods.lefts(Optional.of(drops), false))));
        }
        return outcomes(cylinder, found);
    }

    private Outcomes plug(int cylinder) {
        LookLikelihood looks = new LookLikelihood(constants.plugs());
        return byFault(
                cylinder,
                constants.plugs().looks().size(),
                (fault, look) -> looks.of(constants.plugs().looks().get(look), fault));
    }

    private Outcomes word(int cylinder, Part part) {
        return byFault(cylinder, FurtherTests.outcomes(part), (fault, outcome) -> further.chance(part, outcome, fault));
    }

    private Outcomes coolantGas(int cylinder) {
        return byFault(
                cylinder,
                2,
                (fault, outcome) -> outcome == FurtherTests.POSITIVE
                        ? further.coolantGasPositive(fault)
                        : 1 - further.coolantGasPositive(fault));
    }

    /** P(outcome | fault), where it depends on the fault alone. */
    @FunctionalInterface
    private interface ByFault {
        double chance(Fault fault, int outcome);
    }

    private Outcomes byFault(int cylinder, int count, ByFault chances) {
        return outcomes(
                cylinder,
                IntStream.range(0, count)
                        .mapToObj(outcome -> {
                            Map<Candidate, Double> found = new LinkedHashMap<>();
                            posterior
                                    .candidates(cylinder)
                                    .forEach((candidate, p) ->
                                            found.put(candidate, p * chances.chance(candidate.fault(), outcome)));
                            return found;
                        })
                        .toList());
    }

    private Outcomes leakdown(int cylinder) {
        GaugeTest air = howOthersWereRead();
        LeakTester tester = LeakTester.withRestrictor(
                Unit.PSI.toSi(constants.leakDown().supplyPsi()),
                constants.leakDown().restrictorMm() / 1e3,
                air.stationPascal());
        LeakOutcomes classes = leakOutcomes.computeIfAbsent(
                tester, used -> new LeakOutcomes(likelihoods.tables().leak(used), likelihoods.grid(), constants));
        return outcomes(cylinder, classes.chances(posterior.alone(cylinder), likelihoods));
    }

    /** Normalises p′(f with o) over o for each f, and p(f) over all. */
    private Outcomes outcomes(int cylinder, List<Map<Candidate, Double>> found) {
        Map<Candidate, Double> before = posterior.candidates(cylinder);
        double sum = before.values().stream().mapToDouble(p -> p).sum();
        List<Candidate> candidates = List.copyOf(before.keySet());
        List<List<Double>> given =
                candidates.stream().map(candidate -> shares(found, candidate)).toList();
        return new Outcomes(
                candidates,
                candidates.stream()
                        .map(candidate -> before.getOrDefault(candidate, 0.0) / sum)
                        .toList(),
                given);
    }

    private static List<Double> shares(List<Map<Candidate, Double>> found, Candidate candidate) {
        double[] chances = found.stream()
                .mapToDouble(outcome -> outcome.getOrDefault(candidate, 0.0))
                .toArray();
        if (Chance.sum(chances) == 0) {
            Arrays.fill(chances, 1);
        }
        return Arrays.stream(Chance.madeToSumOne(chances)).boxed().toList();
    }
}
