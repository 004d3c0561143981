package org.pullproof.advice;

import org.pullproof.dyno.DayStarts;
import org.pullproof.dyno.DoNotRun;
import org.pullproof.dyno.DynoFindings;
import org.pullproof.dyno.PullLimits;
import org.pullproof.engine.Setup;
import org.pullproof.health.HealthFindings;
import org.pullproof.session.Session;
import org.pullproof.tuneup.TuneUpFindings;

/** Says how the last dyno day of a session stands. Immutable. */
public final class DayKeeper {
    private final GateKeeper gate;
    private final DayStarts starts;

    public DayKeeper(DoNotRun rules, PullLimits limits) {
        this.gate = new GateKeeper(rules);
        this.starts = new DayStarts(limits);
    }

    DayStanding standing(Session session, HealthFindings health, TuneUpFindings tuneUp, DynoFindings made) {
        return new DayStanding(
                gate.gate(session, health, tuneUp),
                starts.window(session.days(), made.pulls(), session.profile().charged()),
                starts.runs(
                        session.days(), id -> session.setup(id).map(Setup::name).orElse(id)));
    }
}
