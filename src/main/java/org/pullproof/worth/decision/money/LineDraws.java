package org.pullproof.worth.decision.money;

import java.util.Arrays;
import org.pullproof.worth.decision.answer.Input.Common;
import org.pullproof.worth.decision.draws.Ingredient;
import org.pullproof.worth.decision.draws.QuoteQuantile;
import org.pullproof.worth.decision.draws.Streams;
import org.pullproof.worth.decision.problem.CostLine;
import org.pullproof.worth.decision.problem.Overrun;
import org.pullproof.worth.decision.problem.OverrunFactor;
import org.pullproof.worth.decision.problem.Overruns;

/**
 * One cost line in every draw: its quote × overrun, its hours × overrun, whether a find hits.
 *
 * <pre>  overrun = median · exp(σ(√c·Z + √(1 − c)·z)),   σ = ln(P90/median)/1.2816</pre>
 *
 * <p>Z is one number for the whole car, z the line's own, one for its money and another for its hours.
 */
final class LineDraws {
    private final CostLine line;
    private final Scenario scenario;
    private final Streams streams;
    private final double[] bill;
    private final double[] ownHours;
    private final boolean[] comes;

    LineDraws(CostLine line, Scenario scenario, Streams streams) {
        this.line = line;
        this.scenario = scenario;
        this.streams = streams;
        this.bill = money();
        this.ownHours = hours();
        this.comes = found();
    }

    /** The whole bill; of a find, as if it hits. */
    double[] bill() {
        return bill;
    }

    /** Adds what this line costs, draw by draw: a find that misses costs neither money nor hours nor weeks. */
    void addTo(double[] money, double[] engine, double[] hours, double[] weeks) {
        boolean work = line.kind() == CostLine.Kind.ENGINE;
        for (int i = 0; i < bill.length; i++) {
            if (comes[i]) {
                money[i] += bill[i];
                engine[i] += work ? bill[i] : 0;
                hours[i] += ownHours[i];
                weeks[i] += line.weeks();
            }
        }
    }

    private double[] money() {
        double[] uniform = streams.uniform(Ingredient.QUOTE, line.name());
        QuoteQuantile quote = new QuoteQuantile(line.quote());
        double[] factor = moneyFactor();
        double[] money = new double[uniform.length];
        for (int i = 0; i < money.length; i++) {
            money[i] = quote.at(uniform[i]) * factor[i];
        }
        return money;
    }

    private double[] moneyFactor() {
        Overruns overruns = scenario.problem().assumptions().overruns();
        if (line.overrun() == Overrun.REPAIR) {
            return factor(overruns.repair(), Common.REPAIR_OVERRUN, Ingredient.OVERRUN);
        }
        if (line.overrun() == Overrun.REBUILD) {
            return factor(overruns.rebuild(), Common.REBUILD_OVERRUN, Ingredient.OVERRUN);
        }
        return filled(1);
    }

    private double[] hours() {
        if (line.hours() == 0) {
            return filled(0);
        }
        OverrunFactor overrun = scenario.problem().assumptions().overruns().hours();
        double[] hours = factor(overrun, Common.HOURS_OVERRUN, Ingredient.HOURS);
        for (int i = 0; i < hours.length; i++) {
            hours[i] *= line.hours();
        }
        return hours;
    }

    private double[] factor(OverrunFactor overrun, Common moved, Ingredient kind) {
        double shared = scenario.problem().assumptions().overruns().shared();
        double ofCar = overrun.sigma() * Math.sqrt(shared);
        double ofLine = overrun.sigma() * Math.sqrt(1 - shared);
        double median = overrun.median() * scenario.value(moved);
        double[] car = streams.normal(Ingredient.SHARED, "car");
        double[] own = streams.normal(kind, line.name());
        double[] factor = new double[own.length];
        for (int i = 0; i < factor.length; i++) {
            factor[i] = median * Math.exp(ofCar * car[i] + ofLine * own[i]);
        }
        return factor;
    }

    private boolean[] found() {
        boolean[] found = new boolean[streams.size()];
        if (line.find().isEmpty()) {
            Arrays.fill(found, true);
            return found;
        }
        CostLine.Find find = line.find().get();
        double[] uniform = streams.uniform(Ingredient.FIND, find.name());
        for (int i = 0; i < found.length; i++) {
            found[i] = uniform[i] < find.chance();
        }
        return found;
    }

    private double[] filled(double value) {
        double[] filled = new double[streams.size()];
        Arrays.fill(filled, value);
        return filled;
    }
}
