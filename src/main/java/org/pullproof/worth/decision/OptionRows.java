package org.pullproof.worth.decision;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.pullproof.worth.decision.answer.OptionAnswer;
import org.pullproof.worth.decision.answer.Parts;
import org.pullproof.worth.decision.answer.Spread;
import org.pullproof.worth.decision.answer.Sum;
import org.pullproof.worth.decision.draws.Batches;
import org.pullproof.worth.decision.draws.WeightedQuantile;
import org.pullproof.worth.decision.money.Figure;
import org.pullproof.worth.decision.tree.Weights;

/** The rows of the answer: every option weighed against the reference. */
final class OptionRows {
    private static final double ONE_YEAR = 12;
    private static final double THREE_YEARS = 36;

    /** Being not worse in so many draws, option dominates (judgement). */
    private static final double MOST_DRAWS = 0.95;

    /** Rounding of sums of money. */
    private static final double ROUNDING = 1e-9;

    private final Weighed weighed;
    private final List<Realised> realised;
    private final Contest contest;
    private final Twins twins;
    private final BitSet allowed;
    private final int reference;

    OptionRows(Field field, Twins twins) {
        this.weighed = field.weighed();
        this.realised = field.realised();
        this.contest = field.contest();
        this.twins = twins;
        this.allowed = weighed.best().allowed();
        this.reference = weighed.reference();
    }

    /** Best first, those out of the budget after all that are allowed. */
    List<OptionAnswer> rows() {
        Comparator<OptionAnswer> best =
                Comparator.comparingDouble(row -> -row.expected().value());
        return IntStream.range(0, weighed.options())
                .mapToObj(this::row)
                .sorted(Comparator.comparing((OptionAnswer row) -> !row.allowed())
                        .thenComparing(best))
                .toList();
    }

    private OptionAnswer row(int a) {
        String name = weighed.option(a).name();
        Sum over = sum(batches(Figure.OVER_BUDGET, a));
        return new OptionAnswer(
                weighed.option(a),
                twins.of(name),
                sum(difference(Figure.NET, a)),
                spread(realised.get(a).against(realised.get(reference))),
                spread(realised.get(a).cost()),
                mean(Figure.HOURS, a),
                mean(Figure.WEEKS, a),
                over.value(),
                onEdge(over),
                allowed.get(a),
                contest.chanceBest(a),
                contest.regret(a),
                weighed.problem().power().hp() + mean(Figure.POWER, a),
                failure(a, ONE_YEAR),
                failure(a, THREE_YEARS),
                parts(a),
                dominatedBy(a),
                new PolicyReader(weighed, a).steps());
    }

    private boolean onEdge(Sum over) {
        double limit = weighed.problem().assumptions().overLimit();
        return weighed.problem().owner().budget().isPresent()
                && over.se() > 0
                && Math.abs(over.value() - limit) <= 2 * over.se();
    }

    private double[] batches(Figure figure, int a) {
        double[] chances = weighed.chances();
        return weighed.batches(figure, a, weighed.weighing().picks(a, chances), chances);
    }

    private double mean(Figure figure, int a) {
        return Batches.mean(batches(figure, a));
    }

    private double[] difference(Figure figure, int a) {
        double[] own = batches(figure, a);
        double[] other = batches(figure, reference);
        return IntStream.range(0, own.length)
                .mapToDouble(b -> own[b] - other[b])
                .toArray();
    }

    private static Sum sum(double[] batches) {
        return new Sum(Batches.mean(batches), Batches.standardError(batches));
    }

    private Spread spread(double[][] draws) {
        WeightedQuantile quantile = new WeightedQuantile(draws, weighed.chances());
        return new Spread(quantile.at(0.1), quantile.at(0.5), quantile.at(0.9));
    }

    private Parts parts(int a) {
        return new Parts(
                part(Figure.MONEY, a),
                part(Figure.PRICE, a),
                part(Figure.HOURS_PRICED, a),
                part(Figure.WEEKS_PRICED, a),
                part(Figure.POWER_PRICED, a),
                part(Figure.CAR, a),
                part(Figure.FAILURE, a));
    }

    private double part(Figure figure, int a) {
        return Batches.mean(difference(figure, a));
    }

    private double failure(int a, double months) {
        int[] picks = weighed.weighing().picks(a, weighed.chances());
        double[][] failure = weighed.ledger().failure(months);
        return Weights.dot(
                weighed.chances(), weighed.layout().plans().get(a).root().follow(picks, failure));
    }

    /** Another allowed option, at least as good on average in every state, better overall, not worse in 95 of 100 draws. */
    private List<String> dominatedBy(int a) {
        List<String> names = new ArrayList<>();
        for (int other = 0; other < weighed.options(); other++) {
            if (other != a && allowed.get(other) && isBetter(other, a) && contest.notWorse(other, a) >= MOST_DRAWS) {
                names.add(weighed.option(other).name());
            }
        }
        return names;
    }

    private boolean isBetter(int other, int a) {
        double[] chances = weighed.chances();
        double[] one = weighed.weighing().worth(other, chances);
        double[] two = weighed.weighing().worth(a, chances);
        boolean everywhere = IntStream.range(0, one.length).allMatch(s -> one[s] >= two[s] - ROUNDING);
        return everywhere && Weights.dot(chances, one) > Weights.dot(chances, two) + ROUNDING;
    }
}
