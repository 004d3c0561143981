package org.pullproof.changes;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.pullproof.changes.Sweep.Level;

/**
 * Which level of a sweep to use and which to try next (power-change method, 9; O).
 *
 * @param fit the fitted curve
 * @param levels what was tried, rising
 * @param timing whether it is spark timing
 * @param resolution the last digit a level is told with
 */
record SweepAdvice(SweepFit fit, List<Level> levels, boolean timing, double resolution) {
    /** Predicted power that may be given up without noticing, percent. */
    private static final double AS_GOOD = 0.5;

    /** An optimum of timing is never shown tighter than this, degrees: the true curve is not symmetric. */
    private static final double TIGHTEST = 1;

    /** How far from the optimum of timing a next try tells the most, degrees. */
    private static final double FAR = 6;

    SweepAdvice {
        levels = List.copyOf(levels);
    }

    double lowest() {
        return levels.get(0).value();
    }

    double highest() {
        return levels.get(levels.size() - 1).value();
    }

    /** Spacing of the levels: the usual distance between neighbours, of two as usual the smaller. */
    double step() {
        double[] gaps = IntStream.range(1, levels.size())
                .mapToDouble(i -> levels.get(i).value() - levels.get(i - 1).value())
                .sorted()
                .toArray();
        return gaps[(gaps.length - 1) / 2];
    }

    /** Whether the fitted curve has its top inside the range tested. */
    boolean peaksInside() {
        return fit.bendsDown() && fit.optimum() >= lowest() && fit.optimum() <= highest();
    }

    /** The optimum, or the end that the curve puts higher: never beyond what was tested. */
    double best() {
        if (peaksInside()) {
            return fit.optimum();
        }
        return fit.at(highest()) > fit.at(lowest()) ? highest() : lowest();
    }

    Optional<SweepFit.Interval> interval() {
        if (!peaksInside()) {
            return Optional.empty();
        }
        double least = timing ? TIGHTEST : 0;
        return fit.interval()
                .map(of ->
                        new SweepFit.Interval(Math.min(of.low(), best() - least), Math.max(of.high(), best() + least)));
    }

    /** The lowest level that knocked. */
    OptionalDouble knock() {
        return levels.stream().filter(Level::knocked).mapToDouble(Level::value).findFirst();
    }

    private boolean closed(double level) {
        return timing && knock().isPresent() && level >= knock().getAsDouble();
    }

    /** Of timing the least advance that is as good as the top, else the tested level nearest to it; none that knocked. */
    OptionalDouble recommended() {
        DoubleStream offered = timing
                ? candidates().filter(level -> fit.at(level) >= fit.at(best()) - AS_GOOD)
                : tested().sorted(Comparator.comparingDouble(level -> Math.abs(level - best())))
                        .mapToDouble(Double::doubleValue);
        OptionalDouble found =
                offered.filter(level -> !closed(level) && !knockedAt(level)).findFirst();
        return found.isPresent() ? found : highestOpen();
    }

    /** Whether a level lies above all that were tried. */
    boolean isBeyondTried(double level) {
        return levels.stream().allMatch(tried -> tried.value() < level);
    }

    private boolean knockedAt(double level) {
        return levels.stream().anyMatch(tried -> tried.knocked() && tried.value() == level);
    }

    /** Where all that is as good knocked: the highest tested level below. */
    private OptionalDouble highestOpen() {
        return tested().mapToDouble(Double::doubleValue)
                .filter(level -> !closed(level) && !knockedAt(level))
                .max();
    }

    private Stream<Double> tested() {
        return levels.stream().map(Level::value);
    }

    /** Tested levels and those a digit apart between them, rising. */
    private DoubleStream candidates() {
        int count = (int) Math.floor((highest() - lowest()) / resolution());
        DoubleStream between = IntStream.rangeClosed(0, count).mapToDouble(i -> roundedUp(lowest()) + i * resolution());
        return DoubleStream.concat(tested().mapToDouble(Double::doubleValue), between)
                .filter(level -> level <= highest())
                .sorted();
    }

    /** The next level worth two pulls; none where the best is known well enough or both sides are closed. */
    OptionalDouble next() {
        double best = best();
        boolean known = interval()
                .filter(of -> timing && of.low() >= best - TIGHTEST - 1e-9 && of.high() <= best + TIGHTEST + 1e-9)
                .isPresent();
        if (known) {
            return OptionalDouble.empty();
        }
        double up = nearAnEnd(highest(), best) ? highest() + step() : farther(best, 1);
        double down = nearAnEnd(lowest(), best) ? lowest() - step() : farther(best, -1);
        return DoubleStream.of(upFirst(best) ? up : down, upFirst(best) ? down : up)
                .filter(level -> !closed(level))
                .findFirst();
    }

    private boolean nearAnEnd(double end, double best) {
        return Math.abs(end - best) <= step() / 2;
    }

    /** An end that the best lies at comes first, then the side with fewer pulls, of equal ones the higher. */
    private boolean upFirst(double best) {
        if (nearAnEnd(highest(), best) || nearAnEnd(lowest(), best)) {
            return nearAnEnd(highest(), best);
        }
        return pullsFrom(best, 1) <= pullsFrom(best, -1);
    }

    /** Pulls at least one step away on one side. */
    private int pullsFrom(double best, int side) {
        return levels.stream()
                .filter(level -> side * (level.value() - best) >= step())
                .mapToInt(level -> level.pulls().size())
                .sum();
    }

    private double farther(double best, int side) {
        double far = timing ? FAR : 2 * step();
        double wanted = best + side * far;
        double clipped = Math.max(lowest() - step(), Math.min(highest() + step(), wanted));
        return Math.rint(clipped / resolution()) * resolution();
    }

    private double roundedUp(double level) {
        return Math.ceil(level / resolution() - 1e-9) * resolution();
    }
}
