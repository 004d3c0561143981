package org.pullproof.dyno;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.pullproof.units.Figures;

/**
 * Whether power keeps to a smooth course: its scatter about the local parabola.
 *
 * @param limits what is borne
 */
record NoiseRule(PullLimits limits) implements PullRule {
    private static final int FEWEST = 6;

    /** More places than this tell nothing more. */
    private static final int PLACES = 400;

    private static final double SHORT_SECOND = 0.1;

    /** A sample off its course. */
    private record Off(double rpm, double percent, double second) {}

    @Override
    public Stream<String> flags(Judged pull, Company company) {
        List<Off> off = off(pull);
        if (off.size() < FEWEST) {
            return Stream.empty();
        }
        double rms = Math.sqrt(off.stream()
                .mapToDouble(each -> each.percent() * each.percent())
                .average()
                .orElseThrow());
        if (rms > limits.noiseRmsPercent()) {
            return Stream.of("noise: power scatters by " + Figures.percent(rms, 1) + " about its own course; "
                    + Figures.percent(limits.noiseRmsPercent(), 1) + " is borne: a misfire, or a poor signal.");
        }
        return lasting(off);
    }

    private List<Off> off(Judged pull) {
        Trace trace = pull.trace();
        int from = trace.indexFrom(pull.from());
        int to = trace.indexFrom(Math.nextUp(pull.to()));
        double[] rpm = IntStream.range(0, trace.size()).mapToDouble(trace::rpm).toArray();
        double[] watt =
                IntStream.range(0, trace.size()).mapToDouble(trace::watt).toArray();
        double mean =
                IntStream.range(from, to).mapToDouble(trace::watt).average().orElse(Double.NaN);
        List<Off> off = new ArrayList<>();
        for (int i = from; i < to; i += Math.max(1, (to - from) / PLACES)) {
            int low = trace.indexFrom(rpm[i] - limits.noiseWindowRpm() / 2);
            int high = trace.indexFrom(Math.nextUp(rpm[i] + limits.noiseWindowRpm() / 2));
            if (high - low >= FEWEST) {
                double course =
                        new LocalPolynomial(2).at(rpm, watt, low, high, rpm[i]).value();
                off.add(new Off(rpm[i], 100 * (watt[i] - course) / mean, trace.at(Role.TIME, i)));
            }
        }
        return off;
    }

    /** A run of samples on one side, for long enough; without times, of two at least. */
    private Stream<String> lasting(List<Off> off) {
        int from = 0;
        for (int i = 1; i <= off.size(); i++) {
            boolean goesOn = i < off.size()
                    && far(off.get(i))
                    && far(off.get(from))
                    && Math.signum(off.get(i).percent())
                            == Math.signum(off.get(from).percent());
            if (!goesOn) {
                if (i - from > 1 && far(off.get(from)) && longEnough(off.get(from), off.get(i - 1))) {
                    return Stream.of(
                            "noise: from " + Figures.number(off.get(from).rpm(), 0) + " to "
                                    + Figures.number(off.get(i - 1).rpm(), 0) + " rpm power is "
                                    + Figures.signedPercent(off.get(from).percent(), 1) + " off its own course; "
                                    + Figures.percent(limits.noiseSinglePercent(), 0)
                                    + " is borne: a misfire, or a poor signal.");
                }
                from = i;
            }
        }
        return Stream.empty();
    }

    private boolean far(Off off) {
        return Math.abs(off.percent()) > limits.noiseSinglePercent();
    }

    private static boolean longEnough(Off first, Off last) {
        double seconds = last.second() - first.second();
        return Double.isNaN(seconds) || seconds >= SHORT_SECOND;
    }
}
