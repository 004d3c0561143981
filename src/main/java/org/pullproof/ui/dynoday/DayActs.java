package org.pullproof.ui.dynoday;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;
import org.pullproof.advice.LoadGate;
import org.pullproof.dyno.DayFact;
import org.pullproof.dyno.DayPlan;
import org.pullproof.ui.shell.Act;

/** What is done to a dyno day before and between its pulls. */
public interface DayActs {
    /** Ticks a point of the gate. */
    Act tick(LoadGate gate, String point, LocalDateTime when);

    /** Passes a point of the gate with a reason. */
    Act pass(LoadGate gate, String point, String reason, LocalDate day);

    /** Takes a tick or a reason back. */
    Act undo(LoadGate gate, String point, LocalDate day);

    /** Notes a pull broken off. */
    Act abort(String cause, LocalDateTime when);

    /** Tells how the car stands; blank words forget it. */
    Act tell(DayFact fact, String words, LocalDate day);

    /** Plans the pulls of a day; empty forgets the plan. */
    Act plan(Optional<DayPlan> plan, LocalDate day);
}
