package org.pullproof.worth.decision;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.pullproof.worth.decision.answer.Lead;
import org.pullproof.worth.decision.answer.OptionAnswer;
import org.pullproof.worth.decision.answer.Sum;
import org.pullproof.worth.decision.draws.Batches;
import org.pullproof.worth.decision.money.Figure;
import org.pullproof.worth.decision.problem.Option;
import org.pullproof.worth.decision.tree.Best;

/**
 * The best option against the best allowed one with another first act; options that begin with the same act need not be told apart
 * now.
 */
final class Leads {
    private final Weighed weighed;
    private final Best best;
    private final Reruns reruns;
    private final double smallestSum;

    Leads(Weighed weighed, Best best, Reruns reruns, double smallestSum) {
        this.weighed = weighed;
        this.best = best;
        this.reruns = reruns;
        this.smallestSum = smallestSum;
    }

    /** Absent if all that is allowed begins with the same act. */
    Optional<Lead> lead(List<OptionAnswer> rows) {
        String act = weighed.option(best.option()).firstAct();
        return rows.stream()
                .filter(row -> row.allowed() && !row.option().firstAct().equals(act))
                .findFirst()
                .map(row -> over(row.option()));
    }

    private Lead over(Option second) {
        int other = weighed.problem().options().indexOf(second);
        double[] behind = difference(best.option(), other);
        Sum by = new Sum(Batches.mean(behind), Batches.standardError(behind));
        InputNoise inputs = InputNoise.between(best.option(), other, reruns);
        double noise = Math.hypot(2 * by.se(), inputs.total());
        return new Lead(second.name(), by, inputs.total(), inputs.parts(), Math.max(smallestSum, noise));
    }

    private double[] difference(int option, int other) {
        double[] one = batches(option);
        double[] two = batches(other);
        return IntStream.range(0, one.length).mapToDouble(b -> one[b] - two[b]).toArray();
    }

    private double[] batches(int option) {
        double[] chances = weighed.chances();
        return weighed.batches(Figure.NET, option, weighed.weighing().picks(option, chances), chances);
    }
}
