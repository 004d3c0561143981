package org.pullproof.worth.decision;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pullproof.worth.decision.answer.Answer;
import org.pullproof.worth.decision.answer.Flip;
import org.pullproof.worth.decision.answer.Input;
import org.pullproof.worth.decision.answer.Knowing;
import org.pullproof.worth.decision.answer.Lead;
import org.pullproof.worth.decision.answer.OptionAnswer;
import org.pullproof.worth.decision.answer.PairAnswer;
import org.pullproof.worth.decision.answer.Shut;
import org.pullproof.worth.decision.answer.Sum;
import org.pullproof.worth.decision.answer.TestAnswer;
import org.pullproof.worth.decision.problem.Problem;
import org.pullproof.worth.decision.tree.Best;

/** Puts the parts of an answer together; each is computed once. */
final class AnswerMaker {
    /** Sums below this are rounding. */
    private static final double ROUNDING = 1e-9;

    private final Field field;
    private final Weighed weighed;
    private final Twins twins;
    private final Progress progress;
    private final Problem problem;
    private final Best best;
    private final Information information;
    private final Reruns reruns;

    AnswerMaker(Field field, Twins twins, long seed, Progress progress) {
        this.field = field;
        this.weighed = field.weighed();
        this.twins = twins;
        this.progress = progress;
        this.problem = weighed.problem();
        this.best = weighed.best();
        this.information = new Information(weighed);
        this.reruns = new Reruns(weighed, seed);
    }

    Answer make() {
        List<OptionAnswer> rows = new OptionRows(field, twins).rows();
        progress.at(0.4);
        Optional<HighestPrices> prices = HighestPrices.of(weighed);
        TestRows testRows = new TestRows(weighed, information, prices, smallestSum());
        List<TestAnswer> tests = testRows.rows();
        List<PairAnswer> pairs = testRows.pairs(tests);
        Optional<Lead> lead = new Leads(weighed, best, reruns, smallestSum()).lead(rows);
        progress.at(0.5);
        List<Flip> flips = flips();
        return new Answer(
                problem,
                new Calls(weighed, best, smallestSum()).call(rows.get(0), lead),
                weighed.ledger().draws() == 1,
                noise(rows.get(0)),
                rows,
                lead,
                prices.map(found -> found.answer(reruns)),
                shut(),
                flips,
                knowing(tests, pairs),
                tests,
                pairs.stream().findFirst(),
                smallestSum(),
                new Remarks(problem, rows, flips).all());
    }

    private double noise(OptionAnswer first) {
        double inputs =
                InputNoise.between(best.option(), weighed.reference(), reruns).total();
        return Math.hypot(2 * first.expected().se(), inputs);
    }

    private double smallestSum() {
        return problem.assumptions().smallestShare() * problem.owner().worthSound();
    }

    private List<Flip> flips() {
        List<Input> inputs = Inputs.of(problem);
        Flips flips = new Flips(weighed, reruns);
        List<Flip> found = new ArrayList<>();
        for (int k = 0; k < inputs.size(); k++) {
            found.addAll(flips.of(inputs.get(k)));
            progress.at(0.5 + 0.5 * (k + 1) / inputs.size());
        }
        return found;
    }

    /** What would be best without the cap, if that is better: the cap may shut an option out or turn one back halfway. */
    private Optional<Shut> shut() {
        Best free = weighed.weighing().uncapped().best(weighed.chances());
        double costs = free.value() - best.value();
        return Optional.of(new Shut(weighed.option(free.option()).name(), costs))
                .filter(shut -> shut.costsOfCap() > ROUNDING);
    }

    private Knowing knowing(List<TestAnswer> tests, List<PairAnswer> pairs) {
        Map<String, Sum> faults = new LinkedHashMap<>();
        for (String fault : problem.faults().keySet()) {
            faults.put(fault, information.figure(information.shows(fault)));
        }
        Ingredients ingredients = new Ingredients(field.realised(), weighed.chances(), best.allowed(), best.option());
        return new Knowing(
                everything(tests, pairs),
                faults,
                ingredients.all(weighed.ledger().linesByName(), weighed.ledger().gainsByName()));
    }

    /** Under a budget a finding may be worth more than the state itself, as it keeps an option open; perfect is the most of all. */
    private double everything(List<TestAnswer> tests, List<PairAnswer> pairs) {
        double state = information.value(information.showsState());
        double one =
                tests.stream().mapToDouble(test -> test.value().value()).max().orElse(0);
        double two = pairs.stream().mapToDouble(PairAnswer::value).max().orElse(0);
        return Math.max(state, Math.max(one, two));
    }
}
