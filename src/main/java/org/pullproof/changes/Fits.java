package org.pullproof.changes;

import java.util.List;
import java.util.Optional;
import org.pullproof.dyno.PullFindings;

/**
 * The fit of all pulls that count, and a second one without those that carry a flag that spoils (power-change method, 3 and 4).
 *
 * @param counted the pulls that count
 * @param all their fit
 * @param clean those without such a flag
 * @param second the fit of those, if any of the others carries one and some are left
 */
record Fits(PullSequence counted, ChangeFit all, PullSequence clean, Optional<ChangeFit> second) {
    static Fits of(List<PullFindings> pulls, PullSequence counted) {
        PullSequence clean = PullSequence.of(pulls, pull -> !Flagged.spoils(pull), counted.basis());
        boolean differs = clean.entries().size() < counted.entries().size();
        return new Fits(
                counted,
                fit(counted),
                clean,
                differs && !clean.entries().isEmpty() ? Optional.of(fit(clean)) : Optional.empty());
    }

    private static ChangeFit fit(PullSequence pulls) {
        return ChangeFit.of(pulls.observations(), Prior.OF_THIS_PROJECT);
    }

    boolean both(Comparison pair) {
        return counted.has(pair.from()) && counted.has(pair.to());
    }

    /** Whether each side has a pull without a flag that spoils. */
    boolean comparable(Comparison pair) {
        return clean.has(pair.from()) && clean.has(pair.to());
    }

    Estimate estimate(Comparison pair) {
        return all.compare(counted.number(pair.to()), counted.number(pair.from()));
    }

    /** The estimate without the flagged pulls, if there are any. */
    Optional<Estimate> withoutFlagged(Comparison pair) {
        return second.map(fit -> fit.compare(clean.number(pair.to()), clean.number(pair.from())));
    }

    /** The call that both fits make, or none where they differ: then it hinges on the flagged pulls. */
    Optional<Call> commonCall(Comparison pair, double smallest) {
        Call of = Call.of(estimate(pair), smallest);
        boolean agreed = withoutFlagged(pair)
                .map(other -> Call.of(other, smallest) == of)
                .orElse(true);
        return agreed ? Optional.of(of) : Optional.empty();
    }
}
