package org.pullproof.changes;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.pullproof.dyno.PullFindings;

/**
 * The fit of all pulls that count, and a second one without those that are odd or carry a flag that spoils (power-change method,
 * 3 and 4).
 *
 * @param counted the pulls that count
 * @param all their fit
 * @param curves the same fit at every engine speed, if the pulls share enough speeds
 * @param clean the pulls that nothing is said against
 * @param second the fit of those, if there are fewer and some are left
 * @param rotating which setups share their rotating parts
 * @param prior what is assumed before the pulls
 */
record Fits(
        PullSequence counted,
        ChangeFit all,
        Optional<CurveFit> curves,
        PullSequence clean,
        Optional<ChangeFit> second,
        RotatingParts rotating,
        Prior prior) {
    static Fits of(List<PullFindings> pulls, PullSequence counted, Doubts doubts, RotatingParts rotating, Prior prior) {
        PullSequence clean = PullSequence.of(
                pulls,
                pull -> !Flagged.spoils(pull)
                        && !doubts.odd().contains(pull.pull().id()),
                counted.basis());
        boolean differs = clean.entries().size() < counted.entries().size();
        ChangeFit all = ChangeFit.of(counted.observations(), prior);
        return new Fits(
                counted,
                all,
                CurveFit.of(all, counted),
                clean,
                differs && !clean.entries().isEmpty()
                        ? Optional.of(ChangeFit.of(clean.observations(), prior))
                        : Optional.empty(),
                rotating,
                prior);
    }

    boolean both(Comparison pair) {
        return counted.has(pair.from()) && counted.has(pair.to());
    }

    /** Whether the rotating parts are the same and each side has a pull that nothing is said against. */
    boolean comparable(Comparison pair) {
        return rotating.same(pair.from(), pair.to()) && clean.has(pair.from()) && clean.has(pair.to());
    }

    int newer(Comparison pair) {
        return counted.number(pair.to());
    }

    int older(Comparison pair) {
        return counted.number(pair.from());
    }

    Estimate estimate(Comparison pair) {
        return all.compare(newer(pair), older(pair));
    }

    /** The estimate without the doubtful pulls, if there are any. */
    Optional<Estimate> withoutDoubtful(Comparison pair) {
        return second.map(fit -> fit.compare(clean.number(pair.to()), clean.number(pair.from())));
    }

    /** What the pulls of two setups say without those of any other. */
    Estimate alone(Comparison pair) {
        PullSequence two = PullSequence.of(
                counted.entries().stream().map(PullSequence.Entry::pull).toList(),
                pull -> Set.of(pair.from(), pair.to()).contains(pull.pull().setup()),
                counted.basis());
        return ChangeFit.of(two.observations(), prior).compare(two.number(pair.to()), two.number(pair.from()));
    }

    /** The call that both fits make, or none where they differ: then it hinges on the doubtful pulls. */
    Optional<Call> commonCall(Comparison pair, double smallest) {
        Call of = Call.of(estimate(pair), smallest);
        boolean agreed = withoutDoubtful(pair)
                .map(other -> Call.of(other, smallest) == of)
                .orElse(true);
        return agreed ? Optional.of(of) : Optional.empty();
    }

    /** Pulls that a call may hinge on; of a run of two with an odd one, both. */
    List<PullFindings> doubtful() {
        return counted.entries().stream()
                .map(PullSequence.Entry::pull)
                .filter(pull -> Flagged.spoils(pull) || Flagged.has(pull, "odd"))
                .toList();
    }

    Optional<CurveBand> curve(Comparison pair) {
        return curves.map(fit -> fit.compare(newer(pair), older(pair)));
    }
}
