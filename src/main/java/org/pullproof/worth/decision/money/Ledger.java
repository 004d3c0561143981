package org.pullproof.worth.decision.money;

import java.util.Map;
import java.util.Set;
import org.pullproof.worth.decision.answer.Input.Common;
import org.pullproof.worth.decision.draws.Batches;
import org.pullproof.worth.decision.draws.Streams;
import org.pullproof.worth.decision.tree.Table;

/**
 * The money of every end in every state under one scenario. A moved scenario takes over all that its input does not touch. Not safe
 * between threads, because the streams are not.
 */
public final class Ledger {
    private final Layout layout;
    private final Streams streams;
    private final Scenario scenario;
    private final Bills bills;
    private final Gains gains;
    private final Cell[][] cells;
    private final Rates rates;
    private final Overs overs;

    private Ledger(
            Layout layout, Streams streams, Scenario scenario, Bills bills, Gains gains, Cell[][] cells, Overs overs) {
        this.layout = layout;
        this.streams = streams;
        this.scenario = scenario;
        this.bills = bills;
        this.gains = gains;
        this.cells = cells;
        this.rates = Rates.of(scenario);
        this.overs = overs;
    }

    public static Ledger of(Layout layout, Streams streams, Scenario scenario) {
        Bills bills = new Bills(layout, scenario, streams);
        Gains gains = new Gains(layout, scenario, streams);
        Cell[][] cells = cells(layout, streams, scenario, bills, gains);
        return new Ledger(layout, streams, scenario, bills, gains, cells, new Overs(bills, scenario));
    }

    /** The same draws under another scenario of the same problem. */
    public Ledger moved(Scenario to) {
        boolean sameBills = scenario.agrees(to, Common.REPAIR_OVERRUN, Common.REBUILD_OVERRUN, Common.HOURS_OVERRUN);
        boolean sameGains = scenario.agrees(to, Common.GAINS);
        Bills itsBills = sameBills ? bills : new Bills(layout, to, streams);
        Gains itsGains = sameGains ? gains : new Gains(layout, to, streams);
        boolean sameCells = sameBills && sameGains && carAgrees(to);
        Cell[][] itsCells = sameCells ? cells : cells(layout, streams, to, itsBills, itsGains);
        Overs itsOvers = sameBills && scenario.agrees(to, Common.PRICE) ? overs : new Overs(itsBills, to);
        return new Ledger(layout, streams, to, itsBills, itsGains, itsCells, itsOvers);
    }

    private boolean carAgrees(Scenario to) {
        return scenario.agrees(
                to, Common.WORTH_SOUND, Common.RESALE_SHARE, Common.MONTHS_KEPT, Common.HAZARDS, Common.DISCOUNTS);
    }

    private static Cell[][] cells(Layout layout, Streams streams, Scenario scenario, Bills bills, Gains gains) {
        Fate fate = new Fate(streams, scenario.problem().assumptions().failureCost());
        EndReader ends = new EndReader(layout, scenario);
        int states = scenario.chances().length;
        Cell[][] cells = new Cell[layout.leaves().size()][states];
        for (int leaf = 0; leaf < cells.length; leaf++) {
            for (int s = 0; s < states; s++) {
                Cell.End end = ends.read(leaf, s);
                cells[leaf][s] = new Cell(end, bills.get(layout.bill(leaf, s)), gains.get(layout.gain(leaf, s)), fate);
            }
        }
        return cells;
    }

    public Scenario scenario() {
        return scenario;
    }

    public int draws() {
        return streams.size();
    }

    /** N of an end in a state and draw, with the failure that is drawn. */
    public double net(int leaf, int state, int draw) {
        return cells[leaf][state].net(draw, rates);
    }

    /** M of an end in a state and draw, without the price. */
    public double money(int leaf, int state, int draw) {
        return cells[leaf][state].money(draw);
    }

    /** What the trees are rolled over: means over all draws. */
    public Table table() {
        return new Table(mean(Figure.NET), mean(Figure.OVER_BUDGET));
    }

    /** A figure by leaf and state, its mean over all draws. */
    public double[][] mean(Figure figure) {
        int batches = Batches.of(draws());
        double[][] mean = batch(figure, 0);
        for (int b = 1; b < batches; b++) {
            add(mean, batch(figure, b));
        }
        for (double[] row : mean) {
            for (int s = 0; s < row.length; s++) {
                row[s] /= batches;
            }
        }
        return mean;
    }

    private static void add(double[][] to, double[][] more) {
        for (int leaf = 0; leaf < to.length; leaf++) {
            for (int s = 0; s < to[leaf].length; s++) {
                to[leaf][s] += more[leaf][s];
            }
        }
    }

    /** A figure by leaf and state, its mean over one batch of the draws. */
    public double[][] batch(Figure figure, int batch) {
        double[][] values = new double[cells.length][scenario.chances().length];
        for (int leaf = 0; leaf < cells.length; leaf++) {
            for (int s = 0; s < values[leaf].length; s++) {
                values[leaf][s] = figure == Figure.OVER_BUDGET
                        ? overs.of(
                                        layout.bill(leaf, s),
                                        layout.leaves().get(leaf).paysPrice())[batch]
                        : cells[leaf][s].mean(figure, batch, rates);
            }
        }
        return values;
    }

    /** H by leaf and state: chance that the engine fails within so many months, where the car is kept. */
    public double[][] failure(double months) {
        Hazard hazard = new Hazard(scenario);
        double[][] failure = new double[cells.length][scenario.chances().length];
        for (int leaf = 0; leaf < cells.length; leaf++) {
            LeafPlan plan = layout.leaves().get(leaf);
            for (int s = 0; s < failure[leaf].length; s++) {
                Set<String> left = layout.faultSets().get(layout.left(leaf, s));
                failure[leaf][s] = plan.keeps() ? hazard.of(plan.end().cure(), left, months) : 0;
            }
        }
        return failure;
    }

    /** The whole bill of each line in every draw, as if a find hits. */
    public Map<String, double[]> linesByName() {
        return bills.byName();
    }

    /** Each gain in every draw, percent. */
    public Map<String, double[]> gainsByName() {
        return gains.byName();
    }
}
