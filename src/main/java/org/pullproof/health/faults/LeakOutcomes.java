package org.pullproof.health.faults;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.pullproof.health.AirPlace;
import org.pullproof.health.faults.CylinderAlone.Way;
import org.pullproof.health.faults.Hypotheses.Outlet;
import org.pullproof.health.faults.Hypotheses.Path;
import org.pullproof.health.hole.LeakTable;

/**
 * What a leak-down test with listening may find: a zone of the leakage, times nothing heard or one of five places. The likelihood of
 * every class, by outlet and place (z, R), is computed once for all cylinders.
 */
final class LeakOutcomes {
    private final FaultConstants constants;
    private final Grid grid;
    private final LeakTable tester;
    private final List<Heard> airs = new ArrayList<>();
    private final double[] edges;
    private final double[] atRest;
    private final double[] weights;
    private final Map<Outlet, double[][]> byOutlet = new LinkedHashMap<>();
    private final double[] anything;

    LeakOutcomes(LeakTable tester, Grid grid, FaultConstants constants) {
        this.constants = constants;
        this.grid = grid;
        this.tester = tester;
        this.edges = Hypotheses.array(constants.furtherTests().leakZones());
        double[] deviations = Hypotheses.array(constants.leakDown().staticDeviations());
        this.weights = Chance.normalWeights(deviations);
        this.atRest = Arrays.stream(deviations)
                .map(d -> Math.exp(constants.leakDown().staticSd() * d))
                .toArray();
        airs.add(new Heard(Optional.of(Set.of()), constants.hearing()));
        for (AirPlace place : AirPlace.values()) {
            airs.add(new Heard(Optional.of(Set.of(place)), constants.hearing()));
        }
        this.anything = anything();
        fill(0);
        Arrays.stream(constants.holes().areas()).forEach(this::fill);
    }

    private int zones() {
        return edges.length - 1;
    }

    private int classes() {
        return zones() * airs.size();
    }

    private void fill(double x) {
        Map<Path, double[][]> paths = new EnumMap<>(Path.class);
        for (Path path : Path.values()) {
            paths.put(path, new double[classes()][grid.leaks()]);
        }
        for (int place = 0; place < grid.leaks(); place++) {
            double ring = grid.ringLeak(place);
            for (int d = 0; d < atRest.length; d++) {
                add(paths, place, weights[d], (ring + x) * atRest[d], ring / (ring + x));
            }
        }
        mixValves(paths);
        paths.remove(Path.ANY);
        paths.forEach((path, likelihood) -> byOutlet.put(new Outlet(path, x), likelihood));
    }

    private void add(Map<Path, double[][]> paths, int place, double weight, double area, double ringShare) {
        double[] zones = zones(tester.percent(area));
        double grams = tester.gramsASecond(area);
        for (int air = 0; air < airs.size(); air++) {
            int from = air * zones.length;
            airs.get(air).add(weight, ringShare, grams, (path, likelihood) -> {
                double[][] classes = Objects.requireNonNull(paths.get(path));
                for (int zone = 0; zone < zones.length; zone++) {
                    classes[from + zone][place] += likelihood * zones[zone];
                }
            });
        }
    }

    /** Chance of each zone; their edges are uncertain like those of a tester with zones. */
    private double[] zones(double expected) {
        double blunder = constants.gauge().blunder();
        double[] chances = new double[zones()];
        double below = below(edges[0], expected);
        for (int zone = 0; zone < chances.length; zone++) {
            double next = below(edges[zone + 1], expected);
            double flat = blunder
                    * (edges[zone + 1] - edges[zone])
                    / constants.strange().leakWidth();
            chances[zone] = (1 - blunder) * (next - below) + flat;
            below = next;
        }
        return chances;
    }

    private double below(double edge, double expected) {
        return Chance.below((edge - expected) / constants.leakDown().zoneSd());
    }

    private void mixValves(Map<Path, double[][]> paths) {
        double exhaust = constants.priors().heldOpenToExhaust();
        double[][] either = paths.getOrDefault(Path.EITHER_VALVE, new double[0][0]);
        for (int outcome = 0; outcome < either.length; outcome++) {
            for (int place = 0; place < either[outcome].length; place++) {
                either[outcome][place] = exhaust * paths.getOrDefault(Path.EXHAUST, either)[outcome][place]
                        + (1 - exhaust) * paths.getOrDefault(Path.INTAKE, either)[outcome][place];
            }
        }
    }

    /** Where readings do not fit together: any zone, any place. */
    private double[] anything() {
        double heard = constants.strange().heard();
        double silent = Math.pow(1 - heard, AirPlace.values().length);
        double[] chances = new double[classes()];
        for (int outcome = 0; outcome < chances.length; outcome++) {
            chances[outcome] = outcome < zones() ? silent : silent * heard / (1 - heard);
        }
        return chances;
    }

    /** p′(f with o) of every class, for a cylinder that was not leak-tested. */
    List<Map<Candidate, Double>> chances(CylinderAlone cylinder, Likelihoods likelihoods) {
        List<Map<Candidate, Double>> found = new ArrayList<>();
        for (int outcome = 0; outcome < classes(); outcome++) {
            found.add(new LinkedHashMap<>());
        }
        for (Way way : cylinder.ways()) {
            double[] byPlace = byPlace(cylinder.likelihood(), way);
            double before = cylinder.before(way, cylinder.likelihood());
            Outlet outlet = likelihoods.outlet(way.branch());
            for (int outcome = 0; outcome < classes(); outcome++) {
                found.get(outcome).merge(way.candidate(), before * chance(outlet, outcome, byPlace), Double::sum);
            }
        }
        return found;
    }

    private double chance(Outlet outlet, int outcome, double[] byPlace) {
        double[][] likelihood = byOutlet.get(outlet);
        return likelihood == null ? anything[outcome] * Chance.sum(byPlace) : Chance.dot(likelihood[outcome], byPlace);
    }

    /** Σ over (g, w) of K and what multiplies it, times p(z), by place (z, R). */
    private double[] byPlace(CylinderLikelihood likelihood, Way way) {
        double[] k = likelihood.chambers().row(way.branch().chamber());
        int block = grid.block();
        double[] byPlace = new double[grid.leaks()];
        for (int place = 0; place < byPlace.length; place++) {
            int cell = grid.ringIndex(place) * block;
            double sum = 0;
            for (int i = 0; i < block; i++) {
                sum += k[place * block + i] * way.byCell()[cell + i];
            }
            byPlace[place] = grid.weightOfOwn(place) * sum;
        }
        return byPlace;
    }
}
