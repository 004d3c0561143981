package org.pullproof.worth.decision;

import java.util.EnumMap;
import java.util.Map;
import org.pullproof.worth.decision.draws.Batches;
import org.pullproof.worth.decision.draws.Streams;
import org.pullproof.worth.decision.money.Figure;
import org.pullproof.worth.decision.money.Layout;
import org.pullproof.worth.decision.money.Ledger;
import org.pullproof.worth.decision.money.Scenario;
import org.pullproof.worth.decision.problem.Option;
import org.pullproof.worth.decision.problem.Problem;
import org.pullproof.worth.decision.tree.Best;
import org.pullproof.worth.decision.tree.Branch;
import org.pullproof.worth.decision.tree.Weighing;
import org.pullproof.worth.decision.tree.Weights;

/** One scenario with its money reckoned and its options ready to be weighed. Not safe between threads. */
final class Weighed {
    private final Layout layout;
    private final Ledger ledger;
    private final Weighing weighing;
    private final Map<Figure, double[][][]> batches = new EnumMap<>(Figure.class);

    private Weighed(Layout layout, Ledger ledger, Weighing weighing) {
        this.layout = layout;
        this.ledger = ledger;
        this.weighing = weighing;
    }

    private static Weighed of(Layout layout, Ledger ledger) {
        double limit = ledger.scenario().problem().assumptions().overLimit();
        return new Weighed(layout, ledger, new Weighing(layout.plans(), ledger.table(), limit));
    }

    static Weighed of(Layout layout, Streams streams, Scenario scenario) {
        return of(layout, Ledger.of(layout, streams, scenario));
    }

    /** The same draws under another scenario. */
    Weighed moved(Scenario to) {
        return of(layout, ledger.moved(to));
    }

    /** The same money under other chances of the states. */
    Weighed believing(Scenario to) {
        return new Weighed(layout, ledger.moved(to), weighing);
    }

    /** The same scenario on other draws. */
    Weighed drawn(Streams streams) {
        return of(layout, streams, scenario());
    }

    Problem problem() {
        return scenario().problem();
    }

    Scenario scenario() {
        return ledger.scenario();
    }

    Layout layout() {
        return layout;
    }

    Ledger ledger() {
        return ledger;
    }

    Weighing weighing() {
        return weighing;
    }

    double[] chances() {
        return scenario().chances();
    }

    Best best() {
        return weighing.best(chances());
    }

    int options() {
        return problem().options().size();
    }

    Option option(int index) {
        return problem().options().get(index);
    }

    int reference() {
        return problem().options().indexOf(problem().reference());
    }

    /** Σ p·U of an option, its picks made anew; absolute, not against the reference. */
    double worth(int option) {
        return Weights.dot(chances(), weighing.worth(option, chances()));
    }

    /** Mean of a figure of an option in each batch, under these weights and with these picks. */
    double[] batches(Figure figure, int option, int[] picks, double[] weight) {
        Branch root = layout.plans().get(option).root();
        double[][][] values = batches.computeIfAbsent(figure, this::reckon);
        double[] means = new double[values.length];
        for (int b = 0; b < means.length; b++) {
            means[b] = Weights.dot(weight, root.follow(picks, values[b]));
        }
        return means;
    }

    private double[][][] reckon(Figure figure) {
        double[][][] values = new double[Batches.of(ledger.draws())][][];
        for (int b = 0; b < values.length; b++) {
            values[b] = ledger.batch(figure, b);
        }
        return values;
    }
}
