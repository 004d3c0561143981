package org.pullproof.changes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pullproof.dyno.PullFindings;

/** All comparisons that have figures, judged together, so that the number of changes tried can be allowed for. */
final class Tried {
    private final Fits fits;
    private final List<Comparison> pairs;
    private final double smallest;
    private final ChangeWords words;
    private final List<Comparison> steps;
    private final double[] adjusted;

    Tried(Fits fits, List<Comparison> comparisons, double smallest, ChangeWords words) {
        this.fits = fits;
        this.pairs = comparisons.stream().filter(fits::both).toList();
        this.smallest = smallest;
        this.words = words;
        this.steps = pairs.stream()
                .filter(pair -> pair.recorded() && fits.comparable(pair))
                .toList();
        this.adjusted = Holm.adjusted(steps.stream()
                .mapToDouble(pair -> fits.estimate(pair).twoSidedP())
                .toArray());
    }

    List<JudgedChange> judged() {
        List<JudgedChange> judged = new ArrayList<>();
        pairs.forEach(pair -> judged.add(judge(pair)));
        return judged;
    }

    JudgedChange judge(Comparison pair) {
        Estimate estimate = fits.estimate(pair);
        Call call = call(pair);
        Settling settling = settling(pair, call);
        Optional<CurveBand> curve = call == Call.SPOILED ? Optional.empty() : fits.curve(pair);
        boolean holds = (call == Call.GAIN || call == Call.LOSS) && adjustedP(pair, estimate) <= Holm.LEVEL;
        double beforeKw = fits.counted().meanKilowatt(pair.from());
        double difference = Estimate.percent(estimate.difference());
        double low = Estimate.percent(estimate.low());
        double high = Estimate.percent(estimate.high());
        return new JudgedChange(
                words.name(pair),
                pair.from(),
                pair.to(),
                pair.recorded(),
                pair.change(),
                beforeKw,
                fits.counted().meanKilowatt(pair.to()),
                difference,
                low,
                high,
                beforeKw * difference / 100,
                beforeKw * low / 100,
                beforeKw * high / 100,
                call,
                holds,
                settling,
                curve,
                words.sentence(new Said(pair, fits, estimate, call, holds, steps.size(), beforeKw, settling, curve)));
    }

    /** The whole way from one setup to another: what the steps add up to, and beside it what the pulls of the two alone say. */
    JudgedChange whole(Comparison pair) {
        JudgedChange steps = judge(pair);
        return steps.withSentence(steps.sentence() + " " + words.alone(steps.differencePercent(), fits.alone(pair)));
    }

    private Settling settling(Comparison pair, Call call) {
        if (call != Call.NO_CALL) {
            return Settling.DONE;
        }
        List<String> hingesOn = fits.commonCall(pair, smallest).isPresent()
                ? List.of()
                : fits.doubtful().stream().map(PullFindings::name).toList();
        return new Settling(
                true, MorePulls.toSettle(fits.all(), fits.newer(pair), fits.older(pair), smallest), hingesOn);
    }

    Call call(Comparison pair) {
        return fits.comparable(pair) ? fits.commonCall(pair, smallest).orElse(Call.NO_CALL) : Call.SPOILED;
    }

    /** Holm's p of a recorded step; any other pair is taken as one of as many by Bonferroni's plain product. */
    private double adjustedP(Comparison pair, Estimate estimate) {
        int place = steps.indexOf(pair);
        return place >= 0 ? adjusted[place] : estimate.twoSidedP() * Math.max(1, steps.size());
    }
}
