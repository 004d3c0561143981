package org.pullproof.health.faults;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.pullproof.health.AirPlace;
import org.pullproof.health.faults.Hypotheses.Outlet;
import org.pullproof.health.faults.Hypotheses.Path;
import org.pullproof.health.hole.LeakTable;

/**
 * A: how likely a leak-down reading and the places where air was heard are, for an outlet, by (z, R).
 *
 * <pre>
 *  Σ_d weight · [(1−ε) N(L − L(y); 3 points) + ε/100] · Π_place air,     y = a exp(0.40 d)
 *  zone: (1−ε) [Φ((hi−L)/6) − Φ((lo−L)/6)] + ε · width/100
 *  air:  p = f + (most − f)/(1 + (q₅₀/q)^(1/0.45)) where air can go, f elsewhere; heard p, not heard 1 − p
 * </pre>
 *
 * <p>The hole at rest is not the hole while cranked: d. The crankcase always gets the ring leak too. Section 4 of the method [O, J].
 */
final class LeakLikelihood {
    private final FaultConstants constants;
    private final Grid grid;
    private final Optional<Leak> leak;
    private final boolean sure;
    private final double[] atRest;
    private final double[] weights;
    private final Map<Double, Map<Path, double[]>> byHole = new HashMap<>();

    /**
     * @param sure whether the reading is no blunder: its flat part is left out
     */
    LeakLikelihood(Optional<Leak> leak, Grid grid, Tables tables, FaultConstants constants, boolean sure) {
        this.constants = constants;
        this.grid = grid;
        this.leak = leak.filter(read -> read.percent().isPresent() || read.air().isPresent());
        this.sure = sure;
        double[] deviations = Hypotheses.array(constants.leakDown().staticDeviations());
        this.weights = Chance.normalWeights(deviations);
        this.atRest = Arrays.stream(deviations)
                .map(d -> Math.exp(constants.leakDown().staticSd() * d))
                .toArray();
        this.leak.ifPresent(read -> hear(read, tables.leak(read.tester())));
    }

    private final void hear(Leak read, LeakTable tester) {
        byHole.put(0.0, ofHole(0, read, tester));
        for (double x : constants.holes().areas()) {
            byHole.put(x, ofHole(x, read, tester));
        }
    }

    /** A of one outlet, by place (z, R). */
    double[] of(Outlet outlet) {
        if (leak.isPresent() && outlet.path() != Path.ANY) {
            return byHole.getOrDefault(outlet.x(), Map.of()).getOrDefault(outlet.path(), new double[0]);
        }
        double[] likelihood = new double[grid.leaks()];
        Arrays.fill(likelihood, leak.map(this::anyReading).orElse(1.0));
        return likelihood;
    }

    private double anyReading(Leak read) {
        FaultConstants.Strange strange = constants.strange();
        double percent = read.percent()
                .map(range -> range.isZone() ? strange.zone() : 1 / strange.leakWidth())
                .orElse(1.0);
        int places = AirPlace.values().length;
        double air = read.air()
                .map(heard ->
                        Math.pow(strange.heard(), heard.size()) * Math.pow(1 - strange.heard(), places - heard.size()))
                .orElse(1.0);
        return percent * air;
    }

    /** A of one size of hole, by path; what does not depend on the path is computed once. */
    private Map<Path, double[]> ofHole(double x, Leak read, LeakTable tester) {
        Map<Path, double[]> paths = new EnumMap<>(Path.class);
        for (Path path : Path.values()) {
            paths.put(path, new double[grid.leaks()]);
        }
        Heard heard = new Heard(read.air(), constants.hearing());
        for (int place = 0; place < grid.leaks(); place++) {
            double ring = grid.ringLeak(place);
            for (int d = 0; d < atRest.length; d++) {
                double area = (ring + x) * atRest[d];
                double percent = weights[d] * percent(read, tester.percent(area));
                double grams = tester.gramsASecond(area);
                int at = place;
                heard.add(
                        percent,
                        ring / (ring + x),
                        grams,
                        (path, likelihood) -> Objects.requireNonNull(paths.get(path))[at] += likelihood);
            }
        }
        mixValves(paths);
        return paths;
    }

    private void mixValves(Map<Path, double[]> paths) {
        double exhaust = constants.priors().heldOpenToExhaust();
        double[] either = paths.getOrDefault(Path.EITHER_VALVE, new double[0]);
        for (int place = 0; place < either.length; place++) {
            either[place] = exhaust * paths.getOrDefault(Path.EXHAUST, either)[place]
                    + (1 - exhaust) * paths.getOrDefault(Path.INTAKE, either)[place];
        }
    }

    private double percent(Leak read, double expected) {
        return read.percent().isPresent() ? percent(read.percent().get(), expected) : 1;
    }

    private double percent(Leak.Range read, double expected) {
        FaultConstants.LeakDown scatter = constants.leakDown();
        double blunder = constants.gauge().blunder();
        double flat = sure ? 0 : blunder / constants.strange().leakWidth();
        if (!read.isZone()) {
            return (1 - blunder) * Chance.normal(read.from() - expected, scatter.readingSd()) + flat;
        }
        return (1 - blunder)
                        * (Chance.below((read.to() - expected) / scatter.zoneSd())
                                - Chance.below((read.from() - expected) / scatter.zoneSd()))
                + flat * (read.to() - read.from());
    }
}
