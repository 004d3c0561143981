package org.pullproof.app;

import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import org.pullproof.advice.Assessors;
import org.pullproof.advice.DayKeeper;
import org.pullproof.changes.ChangeJudge;
import org.pullproof.dyno.DynoAssessor;
import org.pullproof.files.TradeConstants;
import org.pullproof.files.TradeFiles;
import org.pullproof.health.HealthAssessor;
import org.pullproof.health.faults.FaultModel;
import org.pullproof.session.Judgement;
import org.pullproof.tuneup.TuneUpAssessor;
import org.pullproof.weather.Correction;
import org.pullproof.worth.WorthAssessor;
import org.pullproof.worth.question.Questioner;

/** Makes those who answer for the rooms, by the values of judgement of a session; the last ones are kept. */
public final class JudgedAssessors implements Function<Judgement, Assessors> {
    private final TradeConstants constants;
    private final TradeFiles trade;
    private final Correction correction;
    private final AtomicReference<Made> last;

    private record Made(Judgement by, Assessors assessors) {}

    public JudgedAssessors(TradeConstants constants, TradeFiles trade, Correction correction) {
        this.constants = constants;
        this.trade = trade;
        this.correction = correction;
        this.last = new AtomicReference<>(make(Judgement.own()));
    }

    @Override
    public Assessors apply(Judgement judgement) {
        return last.updateAndGet(made -> made.by().equals(judgement) ? made : make(judgement))
                .assessors();
    }

    private Made make(Judgement by) {
        Assessors assessors = new Assessors(
                new HealthAssessor(constants.health(by), new FaultModel(constants.faults(by)), trade.testCosts()),
                new TuneUpAssessor(trade.stepGraphs()),
                new DynoAssessor(correction, constants.pulls(by)),
                new ChangeJudge(),
                new WorthAssessor(new Questioner(constants.money(by), trade.testPrices())),
                new DayKeeper(trade.doNotRun(), constants.pulls(by)));
        return new Made(by, assessors);
    }
}
