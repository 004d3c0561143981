package org.pullproof.worth.decision.money;

import org.pullproof.worth.decision.draws.Ingredient;
import org.pullproof.worth.decision.draws.QuoteQuantile;
import org.pullproof.worth.decision.draws.Streams;
import org.pullproof.worth.decision.problem.Quote;

/** Whether the engine fails, and what that costs: one yes or no and one cost in each draw, for all options. */
final class Fate {
    private static final String ENGINE = "engine";

    /** It fails where this is below the chance. */
    final double[] uniform;

    final double[] cost;

    Fate(Streams streams, Quote failureCost) {
        QuoteQuantile quantile = new QuoteQuantile(failureCost);
        uniform = streams.uniform(Ingredient.FAILURE, ENGINE);
        cost = streams.uniform(Ingredient.FAILURE_COST, ENGINE).clone();
        for (int i = 0; i < cost.length; i++) {
            cost[i] = quantile.at(cost[i]);
        }
    }
}
