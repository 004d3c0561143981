package org.pullproof.ui.dynoday;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;
import org.pullproof.advice.LoadGate;
import org.pullproof.app.PrepareDay;
import org.pullproof.dyno.DayFact;
import org.pullproof.dyno.DayPlan;
import org.pullproof.ui.shell.Act;

/** The acts before and between pulls, done by the same class as on the command line. */
public final class DeskDayActs implements DayActs {
    private final PrepareDay day;

    public DeskDayActs(PrepareDay day) {
        this.day = day;
    }

    @Override
    public Act tick(LoadGate gate, String point, LocalDateTime when) {
        return open -> day.tick(open, gate, point, when);
    }

    @Override
    public Act pass(LoadGate gate, String point, String reason, LocalDate date) {
        return open -> day.pass(open, gate, point, reason, date);
    }

    @Override
    public Act undo(LoadGate gate, String point, LocalDate date) {
        return open -> day.undo(open, gate, point, date);
    }

    @Override
    public Act abort(String cause, LocalDateTime when) {
        return open -> day.abort(open, cause, when);
    }

    @Override
    public Act tell(DayFact fact, String words, LocalDate date) {
        return open -> day.tell(open, fact, words, date);
    }

    @Override
    public Act plan(Optional<DayPlan> plan, LocalDate date) {
        return open -> day.plan(open, plan, date);
    }
}
