package org.pullproof.worth.question;

import org.pullproof.worth.decision.problem.Assumptions;
import org.pullproof.worth.decision.problem.OverrunFactor;
import org.pullproof.worth.decision.problem.Overruns;
import org.pullproof.worth.decision.problem.Quote;
import org.pullproof.worth.trade.Catalogue;

/** What the method assumes, from the numbers of the catalogue. */
record Assumed(Catalogue catalogue) {
    Assumptions assumptions() {
        double dollar = catalogue.number("rate.dollar");
        return new Assumptions(
                catalogue.number("car.resale-share"),
                catalogue.number("car.sale-friction"),
                catalogue.number("budget.over-limit"),
                catalogue.number("failure.sound"),
                catalogue.number("failure.hard-pulls"),
                new Quote(
                        dollar * catalogue.number("failure.cost.p10"),
                        dollar * catalogue.number("failure.cost.p50"),
                        dollar * catalogue.number("failure.cost.p90")),
                new Overruns(factor("repair"), factor("rebuild"), factor("hours"), catalogue.number("overrun.shared")),
                catalogue.number("decision.smallest-share"),
                catalogue.number("gain.change-spread"));
    }

    private OverrunFactor factor(String kind) {
        return new OverrunFactor(
                catalogue.number("overrun." + kind + ".median"), catalogue.number("overrun." + kind + ".p90"));
    }
}
