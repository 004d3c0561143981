package org.pullproof.advice;

import java.util.List;
import org.pullproof.changes.ChangeLedger;
import org.pullproof.dyno.DynoFindings;
import org.pullproof.health.HealthFindings;
import org.pullproof.session.Session;
import org.pullproof.tuneup.TuneUpFindings;
import org.pullproof.units.Figures;
import org.pullproof.units.Sentence;
import org.pullproof.worth.WorthFindings;

/**
 * What one session amounts to: each room's answer, computed once. The window, the command line and the report read their
 * figures and sentences from here and nowhere else.
 *
 * @param session the document it is made from
 * @param figures how its sentences write figures
 * @param carAnswer the answer of the sheet Car, in one sentence
 * @param health is it sound
 * @param tuneUp is it in tune, may it be started
 * @param dyno what it makes
 * @param changes which change made power
 * @param worth is it worth more money
 * @param day how the last dyno day stands
 * @param next what to do now
 * @param stages how far each stage is, in the order of the job
 */
public record Appraisal(
        Session session,
        Figures figures,
        Sentence carAnswer,
        HealthFindings health,
        TuneUpFindings tuneUp,
        DynoFindings dyno,
        ChangeLedger changes,
        WorthFindings worth,
        DayStanding day,
        NextStep next,
        List<StageProgress> stages) {
    public Appraisal {
        stages = List.copyOf(stages);
    }

    /** The gate before the first pull of the last dyno day. */
    public LoadGate gate() {
        return day.gate();
    }
}
