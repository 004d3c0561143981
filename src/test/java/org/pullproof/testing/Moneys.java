package org.pullproof.testing;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.pullproof.changes.Change;
import org.pullproof.changes.ChangeLedger;
import org.pullproof.files.TradeConstants;
import org.pullproof.files.TradeFiles;
import org.pullproof.health.HealthAssessor;
import org.pullproof.health.HealthFindings;
import org.pullproof.health.Reading;
import org.pullproof.health.faults.FaultModel;
import org.pullproof.session.Judgement;
import org.pullproof.session.Session;
import org.pullproof.units.Figures;
import org.pullproof.units.UnitSystem;
import org.pullproof.worth.Spending;
import org.pullproof.worth.WorthAssessor;
import org.pullproof.worth.WorthFindings;
import org.pullproof.worth.question.Questioner;

/** The money of a session, weighed as the program does, with readings weighed by the real fault model. */
public final class Moneys {
    private static final TradeFiles TRADE = new TradeFiles();
    private static final TradeConstants CONSTANTS = new TradeConstants();

    private Moneys() {}

    public static WorthAssessor assessor() {
        return assessor(Judgement.own());
    }

    private static WorthAssessor assessor(Judgement judgement) {
        return new WorthAssessor(new Questioner(CONSTANTS.money(judgement), TRADE.testPrices()));
    }

    public static HealthFindings health(Session session) {
        HealthAssessor assessor = new HealthAssessor(
                CONSTANTS.health(session.judgement()),
                new FaultModel(CONSTANTS.faults(session.judgement())),
                TRADE.testCosts());
        return assessor.assess(session.readings(), session.profile(), session.car(), new Figures(UnitSystem.US));
    }

    public static WorthFindings of(Session session, ChangeLedger ledger, OptionalDouble presentBandKw) {
        List<Spending> costs = session.changes().stream()
                .flatMap(change -> spending(change).stream())
                .toList();
        return assessor(session.judgement())
                .assess(
                        session.money(),
                        session.car(),
                        costs,
                        health(session),
                        session.readings().stream().map(Reading::test).collect(Collectors.toSet()),
                        ledger,
                        session.setups(),
                        presentBandKw,
                        session.profile());
    }

    private static java.util.Optional<Spending> spending(Change change) {
        return change.cost()
                .map(cost -> new Spending(change.what(), cost, change.time().toLocalDate()));
    }
}
