package org.pullproof.dyno;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * Whether a pull was taken in twice: the same file, or figures that are the same but for a shift of the whole. Two pulls of one engine
 * agree in their shape, but not so well, and not at the same height of it.
 *
 * @param limits what is borne
 */
record SameRule(PullLimits limits) implements PullRule {
    private static final int FEWEST = 20;

    /** How near 1 the ratio of two spreads is in a copy. */
    private static final double SAME_SPREAD = 0.001;

    @Override
    public Stream<String> flags(Judged pull, Company company) {
        return company.before(pull).stream()
                .flatMap(before -> same(pull, before).stream())
                .limit(1);
    }

    private Optional<String> same(Judged pull, Judged before) {
        PullFile file = before.pull().file();
        if (file.sha256().equals(pull.pull().file().sha256())) {
            return pull.pull().how().part() == before.pull().how().part()
                    ? Optional.of("duplicate: the file is the same as that of " + before.name() + ", byte for byte.")
                    : Optional.empty();
        }
        return sameFigures(pull, before)
                ? Optional.of("duplicate: its figures are those of " + before.name()
                        + " in another file; exclude one of the two.")
                : Optional.empty();
    }

    private boolean sameFigures(Judged pull, Judged before) {
        int from = (int) Math.ceil(Math.max(pull.from(), before.trace().firstRpm()));
        int to = (int) Math.floor(Math.min(pull.to(), before.trace().lastRpm()));
        int first = Math.max(from, (int) Math.ceil(pull.trace().firstRpm()));
        int last = Math.min(to, (int) Math.floor(pull.trace().lastRpm()));
        if (last - first < FEWEST * PowerCurve.STEP) {
            return false;
        }
        int begin = Math.floorDiv(first + PowerCurve.STEP - 1, PowerCurve.STEP);
        int end = Math.floorDiv(last, PowerCurve.STEP) + 1;
        double spread = pull.power().spread(begin, end) / before.power().spread(begin, end);
        return Math.abs(Math.sqrt(spread) - 1) < SAME_SPREAD
                && pull.power().correlation(before.power(), begin, end) > limits.sameCorrelation();
    }
}
