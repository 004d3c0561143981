package org.pullproof.advice;

import org.pullproof.changes.ChangeJudge;
import org.pullproof.dyno.DynoAssessor;
import org.pullproof.health.HealthAssessor;
import org.pullproof.tuneup.TuneUpAssessor;
import org.pullproof.worth.WorthAssessor;

/** One who answers for each room, all of them by the same values of judgement. */
public record Assessors(
        HealthAssessor health,
        TuneUpAssessor tuneUp,
        DynoAssessor dyno,
        ChangeJudge changes,
        WorthAssessor worth,
        DayKeeper day) {}
