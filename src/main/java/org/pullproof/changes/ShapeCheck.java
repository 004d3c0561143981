package org.pullproof.changes;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.descriptive.rank.Median;
import org.pullproof.dyno.Trace;

/**
 * Finds pulls whose curve has another shape than those of its day: a slip, a misfire, a lift that came back. Needs no repeat.
 *
 * <pre>
 * e_i(r) = second difference of 100·ln P_i on a 100-rpm grid, less its median over the pulls
 * R_i = rms of e_i ;  flagged if R_i &gt; 1.8·median(R)
 * </pre>
 *
 * <p>Own rule, simulated (O): it found nearly all slip steps and misfire spikes of 2 to 8 %, and no pull that merely started
 * hot. A roughness below 0.05 % is never flagged, since it moves no band power (O).
 */
final class ShapeCheck {
    private static final int STEP = 100;
    private static final int FEWEST_PULLS = 3;
    private static final int FEWEST_POINTS = 5;
    private static final double LIMIT = 1.8;
    private static final double NOTHING = 0.05;

    private ShapeCheck() {}

    /**
     * A pull of another shape.
     *
     * @param place in the list of pulls
     * @param roughness R of this pull, percent
     * @param usual the median of R over all pulls, percent
     */
    record Odd(int place, double roughness, double usual) {}

    static List<Odd> in(List<Trace> traces) {
        int from = (int)
                Math.ceil(traces.stream().mapToDouble(Trace::firstRpm).max().orElse(0) / STEP);
        int to = (int)
                Math.floor(traces.stream().mapToDouble(Trace::lastRpm).min().orElse(0) / STEP);
        if (traces.size() < FEWEST_PULLS || to - from + 1 < FEWEST_POINTS) {
            return List.of();
        }
        double[][] bends = traces.stream().map(trace -> bends(trace, from, to)).toArray(double[][]::new);
        double[] roughness = roughness(bends);
        double usual = new Median().evaluate(roughness);
        return IntStream.range(0, roughness.length)
                .filter(i -> roughness[i] > Math.max(NOTHING, LIMIT * usual))
                .mapToObj(i -> new Odd(i, roughness[i], usual))
                .toList();
    }

    private static double[] bends(Trace trace, int from, int to) {
        double[] y = IntStream.rangeClosed(from, to)
                .mapToDouble(i -> 100 * Math.log(Math.max(1, trace.wattAt(i * (double) STEP))))
                .toArray();
        return IntStream.range(1, y.length - 1)
                .mapToDouble(i -> y[i - 1] - 2 * y[i] + y[i + 1])
                .toArray();
    }

    private static double[] roughness(double[][] bends) {
        double[] usual = IntStream.range(0, bends[0].length)
                .mapToDouble(i -> new Median()
                        .evaluate(Arrays.stream(bends)
                                .mapToDouble(bend -> bend[i])
                                .toArray()))
                .toArray();
        return Arrays.stream(bends)
                .mapToDouble(bend -> Math.sqrt(IntStream.range(0, bend.length)
                        .mapToDouble(i -> (bend[i] - usual[i]) * (bend[i] - usual[i]))
                        .average()
                        .orElse(0)))
                .toArray();
    }
}
