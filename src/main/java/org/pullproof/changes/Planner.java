package org.pullproof.changes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Plans the pulls of a day for a gain that is to be seen.
 *
 * <pre>
 * d = √v·(t(0.95, ν)·s̃ + t(0.80, ν)·s) ;  s̃² = (ν0·s0² + (ν − ν0)·s²)/ν
 * </pre>
 *
 * <p>v is that of the fit for the planned order, s the scatter a pull. Own rule (O); simulated chance to see d: 85 to 92 %
 * without drift, 80 to 91 % with drift in plans that return, only 40 to 80 % in A-B without return. d is in y = 100·ln(power),
 * so 1 is about 1 %.
 */
public final class Planner {
    /** A pull with its share of the changes takes about this long (C, common practice without a source). */
    public static final int MINUTES_A_PULL = 5;

    private static final int MOST_PULLS_A_VISIT = 6;
    private static final int MOST_VISITS_OF_TWO = 9;

    private final Prior prior;
    private final double scatter;

    /** Plans with what this project assumes of a dyno until pulls say otherwise. */
    public Planner() {
        this(Prior.OF_THIS_PROJECT.scatter());
    }

    /**
     * @param scatter s, pull-to-pull scatter in percent
     * @throws IllegalArgumentException if the scatter is not above 0
     */
    public Planner(double scatter) {
        if (!(scatter > 0) || Double.isInfinite(scatter)) {
            throw new IllegalArgumentException("The scatter of a pull is more than 0 %, was " + scatter + " %.");
        }
        this.prior = Prior.OF_THIS_PROJECT;
        this.scatter = scatter;
    }

    /** What is assumed without pulls, percent. */
    public static double assumedScatter() {
        return Prior.OF_THIS_PROJECT.scatter();
    }

    /**
     * What one order can see.
     *
     * @param order the visits by name of the setup, at least two setups
     * @param pulls at each visit, at least 1
     * @throws IllegalArgumentException if there are fewer than two setups or no pulls
     */
    public Plan of(List<String> order, int pulls) {
        List<String> settings = order.stream().distinct().toList();
        if (settings.size() < 2 || pulls < 1) {
            throw new IllegalArgumentException("A plan visits at least two setups with at least one pull each.");
        }
        List<Observation> planned = planned(order, settings, pulls);
        Regression regression = new Regression(Design.ofSettings(planned, prior), prior.scatter());
        double worst = IntStream.range(1, settings.size())
                .mapToDouble(newer -> regression
                        .spread(regression.contrast(newer, alternates(order) ? 0 : newer - 1))
                        .v())
                .max()
                .orElseThrow();
        return new Plan(order, pulls, seen(worst, regression.design().degrees()));
    }

    private double seen(double v, double degrees) {
        double assumed = prior.weight() * prior.scatter() * prior.scatter();
        double expected = Math.sqrt((assumed + (degrees - prior.weight()) * scatter * scatter) / degrees);
        return Math.sqrt(v) * (Quantile.ofInterval(degrees) * expected + Quantile.ofPower(degrees) * scatter);
    }

    private static List<Observation> planned(List<String> order, List<String> settings, int pulls) {
        List<Observation> planned = new ArrayList<>();
        int block = 0;
        for (int visit = 0; visit < order.size(); visit++) {
            boolean goesOn = visit > 0 && order.get(visit).equals(order.get(visit - 1));
            block = goesOn ? block : block + 1;
            for (int i = 0; i < pulls; i++) {
                planned.add(new Observation(0, planned.size() + 1, block, settings.indexOf(order.get(visit)), 0));
            }
        }
        return planned;
    }

    /** Whether every second visit is back at the first setup; then each change is judged against that one. */
    private static boolean alternates(List<String> order) {
        return IntStream.range(0, order.size())
                .allMatch(visit -> (visit % 2 == 0) == order.get(visit).equals(order.get(0)));
    }

    /**
     * The plan that sees a gain with the least effort: fewest pulls and changes, a change counted like a pull. Only orders that
     * come back are offered, since without that a drift passes for a gain.
     *
     * @param gain percent
     * @param settings how many setups, the base counted
     * @param mostPulls how many pulls there is time for, if that is limited
     * @return the plan; empty if none of up to {@link #MOST_PULLS_A_VISIT} pulls a visit sees it in that time
     */
    public Optional<Plan> forGain(double gain, int settings, OptionalInt mostPulls) {
        return candidates(settings, mostPulls)
                .filter(plan -> plan.detectablePercent() <= gain)
                .min(Comparator.comparingInt((Plan plan) -> plan.totalPulls() + plan.changes())
                        .thenComparingDouble(Plan::detectablePercent));
    }

    /** The plan that sees the smallest gain in that many pulls; empty if there is time for none. */
    public Optional<Plan> sharpest(int settings, OptionalInt mostPulls) {
        return candidates(settings, mostPulls).min(Comparator.comparingDouble(Plan::detectablePercent));
    }

    private Stream<Plan> candidates(int settings, OptionalInt mostPulls) {
        return orders(settings).stream()
                .flatMap(order -> IntStream.rangeClosed(1, MOST_PULLS_A_VISIT)
                        .filter(pulls -> pulls * order.size() <= mostPulls.orElse(Integer.MAX_VALUE))
                        .mapToObj(pulls -> of(order, pulls)));
    }

    private static List<List<String>> orders(int settings) {
        List<List<String>> orders = new ArrayList<>();
        if (settings == 2) {
            for (int visits = 3; visits <= MOST_VISITS_OF_TWO; visits += 2) {
                orders.add(IntStream.range(0, visits)
                        .mapToObj(visit -> name(visit % 2))
                        .toList());
            }
            return orders;
        }
        orders.add(backAtTheEnd(settings));
        orders.add(backEverySecond(settings));
        orders.add(backEveryTime(settings));
        return orders;
    }

    private static List<String> backAtTheEnd(int settings) {
        return Stream.concat(IntStream.range(0, settings).mapToObj(Planner::name), Stream.of(name(0)))
                .toList();
    }

    /** A B C A D E A F A. */
    private static List<String> backEverySecond(int settings) {
        List<String> order = new ArrayList<>(List.of(name(0)));
        for (int setting = 1; setting < settings; setting++) {
            order.add(name(setting));
            if (setting % 2 == 0 || setting == settings - 1) {
                order.add(name(0));
            }
        }
        return order;
    }

    private static List<String> backEveryTime(int settings) {
        List<String> order = new ArrayList<>(List.of(name(0)));
        for (int setting = 1; setting < settings; setting++) {
            order.addAll(List.of(name(setting), name(0)));
        }
        return order;
    }

    /** A, B … Z, A1, B1 …. */
    private static String name(int setting) {
        String letter = String.valueOf((char) ('A' + setting % 26));
        return setting < 26 ? letter : letter + setting / 26;
    }
}
