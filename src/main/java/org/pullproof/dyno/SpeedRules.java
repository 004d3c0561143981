package org.pullproof.dyno;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.stat.descriptive.rank.Median;
import org.pullproof.units.Figures;

/**
 * Whether the engine's speed rose as it should: times in order, no dip, no slip against the roll, at the usual rate.
 *
 * @param limits what is borne
 */
record SpeedRules(PullLimits limits) implements PullRule {
    @Override
    public Stream<String> flags(Judged pull, Company company) {
        return Stream.of(times(pull), dip(pull), slip(pull), rate(pull, company))
                .flatMap(stream -> stream);
    }

    private Stream<String> times(Judged pull) {
        double[] second = pull.rows().finite(Role.TIME);
        if (second.length < 3) {
            return Stream.empty();
        }
        double[] steps = IntStream.range(1, second.length)
                .mapToDouble(i -> second[i] - second[i - 1])
                .toArray();
        double usual = new Median().evaluate(steps);
        double least = Arrays.stream(steps).min().orElseThrow();
        double most = Arrays.stream(steps).max().orElseThrow();
        if (least <= 0) {
            return Stream.of("time: between two samples in the band the clock moves by " + seconds(least)
                    + "; it should run on.");
        }
        return most > limits.gapTimes() * usual
                ? Stream.of("time: " + seconds(most) + " lie between two samples in the band, more than "
                        + Figures.number(limits.gapTimes(), 0) + " of the usual steps of " + seconds(usual) + ".")
                : Stream.empty();
    }

    private static String seconds(double value) {
        return Figures.number(value, 3) + Figures.NO_BREAK_SPACE + "s";
    }

    private Stream<String> dip(Judged pull) {
        Recording rows = pull.rows();
        int deepest = IntStream.range(1, rows.size()).reduce(0, (a, b) -> fall(rows, b) > fall(rows, a) ? b : a);
        double fall = fall(rows, deepest);
        double at = rows.size() == 0 ? 0 : rows.at(Role.RPM, Math.max(0, deepest - 1));
        return fall > limits.dipRpm() || (fall > limits.dipPercent() / 100 * at && fall > 0)
                ? Stream.of("dip: the speed falls by " + rpm(fall) + " at " + rpm(at) + ", more than "
                        + Figures.percent(limits.dipPercent(), 1) + " or " + rpm(limits.dipRpm())
                        + " between two samples.")
                : Stream.empty();
    }

    private static double fall(Recording rows, int row) {
        return row == 0 ? 0 : rows.at(Role.RPM, row - 1) - rows.at(Role.RPM, row);
    }

    private static String rpm(double value) {
        return Figures.number(value, 0) + " rpm";
    }

    private Stream<String> slip(Judged pull) {
        double[] ratio = Medians.of(
                pull.rows(), row -> pull.rows().at(Role.RPM, row) / pull.rows().at(Role.ROLL, row));
        if (ratio.length < 3) {
            return Stream.empty();
        }
        double usual = new Median().evaluate(ratio);
        double moved = 100
                * (Arrays.stream(ratio).max().orElseThrow()
                        - Arrays.stream(ratio).min().orElseThrow())
                / usual;
        double step = 100
                * IntStream.range(1, ratio.length)
                        .mapToDouble(i -> Math.abs(ratio[i] - ratio[i - 1]))
                        .max()
                        .orElseThrow()
                / usual;
        String said = "slip: engine speed over roll speed moves by " + Figures.percent(moved, 1) + " in the band";
        if (step > limits.unlockedPercent()) {
            return Stream.of(said + ", " + Figures.percent(step, 1) + " of it in one step of more than "
                    + Figures.percent(limits.unlockedPercent(), 0) + ": the gear was changed or a tyre let go.");
        }
        if (moved > limits.unlockedPercent()) {
            return Stream.of(said + ", more than " + Figures.percent(limits.unlockedPercent(), 0)
                    + ": the converter is not locked, or the clutch or a tyre slips.");
        }
        boolean rises = ratio[ratio.length - 1] > ratio[0];
        return moved > limits.slipPercent() && rises
                ? Stream.of(said + " and rises, more than " + Figures.percent(limits.slipPercent(), 0)
                        + ": the clutch or a tyre slips.")
                : Stream.empty();
    }

    private Stream<String> rate(Judged pull, Company company) {
        OptionalDouble usual = company.usualOfSetup(pull, Figured.sweepRate());
        double own = pull.sweepRate();
        if (usual.isEmpty() || Double.isNaN(own)) {
            return Stream.empty();
        }
        double off = 100 * (own / usual.getAsDouble() - 1);
        return Math.abs(off) > limits.sweepRatePercent()
                ? Stream.of("sweep-rate: the speed rises by " + Figures.number(own, 0) + " rpm a second, "
                        + Figures.signedPercent(off, 0) + " from what is usual for this setup; "
                        + Figures.percent(limits.sweepRatePercent(), 0) + " is borne.")
                : Stream.empty();
    }
}
