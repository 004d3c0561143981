package org.pullproof.worth.decision;

import org.pullproof.worth.decision.answer.Answer;
import org.pullproof.worth.decision.answer.Input.Common;
import org.pullproof.worth.decision.draws.Streams;
import org.pullproof.worth.decision.money.Certainty;
import org.pullproof.worth.decision.money.Layout;
import org.pullproof.worth.decision.money.Scenario;
import org.pullproof.worth.decision.problem.Problem;

/**
 * Answers whether an engine is worth more money, by the method of {@code docs/methods/worth.md}. Immutable and safe between
 * threads; the same seed gives the same answer.
 *
 * <p>States are enumerated exactly; costs, gains and failures are drawn, the same draws for every state and option: about 100,000
 * draws × states, at least 1,000 a state, and a single one when nothing has to be drawn.
 */
public final class Decision {
    private static final int DRAWS_TIMES_STATES = 100_000;
    private static final int LEAST_DRAWS = 1000;
    private static final int TEN = 10;
    private static final double FIELD_DRAWN = 0.2;

    private final long seed;

    public Decision(long seed) {
        this.seed = seed;
    }

    public Answer answer(Problem problem) {
        return answer(problem, Progress.UNWATCHED);
    }

    /**
     * The whole answer; takes some tenths of a second, so screens ask for it in the background.
     *
     * @throws java.util.concurrent.CancellationException if the one who watches throws it
     */
    public Answer answer(Problem problem, Progress progress) {
        progress.at(0);
        Field field = Field.of(weighed(problem));
        progress.at(FIELD_DRAWN);
        Twins twins = Twins.among(field);
        boolean same = twins.problem().options().size() == problem.options().size();
        return new AnswerMaker(same ? field : Field.of(weighed(twins.problem())), twins, seed, progress).make();
    }

    private Weighed weighed(Problem problem) {
        Streams streams = new Streams(seed, draws(problem));
        Weighed weighed = Weighed.of(new Layout(problem, streams), streams, Scenario.of(problem));
        boolean unknown = problem.owner()
                .purchase()
                .filter(purchase -> purchase.asked().isEmpty())
                .isPresent();
        return unknown ? atHighestPrice(weighed) : weighed;
    }

    /** A price that is not known is taken to be the highest one, where news is worth most. */
    private static Weighed atHighestPrice(Weighed weighed) {
        return HighestPrices.of(weighed)
                .map(prices -> weighed.moved(weighed.scenario().with(Common.PRICE, Math.max(0, prices.now()))))
                .orElse(weighed);
    }

    private int draws(Problem problem) {
        Layout layout = new Layout(problem, new Streams(seed, 1));
        int each = DRAWS_TIMES_STATES / problem.states().size() / TEN * TEN;
        return new Certainty(problem, layout).isExact() ? 1 : Math.max(LEAST_DRAWS, each);
    }
}
