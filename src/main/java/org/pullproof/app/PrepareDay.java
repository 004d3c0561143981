package org.pullproof.app;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.pullproof.advice.LoadGate;
import org.pullproof.dyno.DayFact;
import org.pullproof.dyno.DayGate;
import org.pullproof.dyno.DayPlan;
import org.pullproof.dyno.DynoDay;
import org.pullproof.dyno.DynoDays;
import org.pullproof.files.BadFileException;
import org.pullproof.session.Edit;
import org.pullproof.session.Session;

/** Goes through the gate before the first pull of a day, tells how the car stands on the dyno, and notes a pull broken off. */
public final class PrepareDay {
    private final SessionDesk desk;

    public PrepareDay(SessionDesk desk) {
        this.desk = desk;
    }

    /**
     * @param gate as the session was appraised
     * @param point its key
     * @throws IllegalArgumentException with a sentence if there is no such point or it cannot be ticked
     */
    public OpenSession tick(OpenSession open, LoadGate gate, String point, LocalDateTime when) throws BadFileException {
        gate.requireTickable(point);
        return edit(open, "Tick at the gate: " + point, when.toLocalDate(), by -> by.tick(point, when));
    }

    /**
     * @param reason why the point may be passed though it is not right or not known; it stands in the report
     * @throws IllegalArgumentException with a sentence if there is no such point, it is the start gate, or no reason is given
     */
    public OpenSession pass(OpenSession open, LoadGate gate, String point, String reason, LocalDate day)
            throws BadFileException {
        gate.requireOwn(point);
        return edit(open, "Pass at the gate: " + point, day, by -> by.pass(point, reason));
    }

    /**
     * Takes a tick or a reason back.
     *
     * @throws IllegalArgumentException with a sentence if there is no such point
     */
    public OpenSession undo(OpenSession open, LoadGate gate, String point, LocalDate day) throws BadFileException {
        gate.requireOwn(point);
        return edit(open, "Take back at the gate: " + point, day, by -> by.undo(point));
    }

    /**
     * Notes a pull broken off; the gate closes until every point is looked at again.
     *
     * @throws IllegalArgumentException without a cause
     */
    public OpenSession abort(OpenSession open, String cause, LocalDateTime when) throws BadFileException {
        DayGate.Abort abort = new DayGate.Abort(when, cause.strip());
        return edit(open, "Note an abort", when.toLocalDate(), by -> by.abort(abort));
    }

    /** Tells how the car stands on the dyno that day; blank words forget it. */
    public OpenSession tell(OpenSession open, DayFact fact, String words, LocalDate day) throws BadFileException {
        return desk.edit(
                open, new Edit("Tell the day: " + fact.key(), changed(day, known -> known.withFact(fact, words))));
    }

    /** Plans the pulls of a day; empty forgets the plan. */
    public OpenSession plan(OpenSession open, Optional<DayPlan> plan, LocalDate day) throws BadFileException {
        return desk.edit(open, new Edit("Plan the day", changed(day, known -> known.withPlan(plan))));
    }

    private OpenSession edit(OpenSession open, String name, LocalDate day, UnaryOperator<DayGate> change)
            throws BadFileException {
        return desk.edit(open, new Edit(name, changed(day, known -> known.withGate(change.apply(known.gate())))));
    }

    private static UnaryOperator<Session> changed(LocalDate day, UnaryOperator<DynoDay> change) {
        return session -> session.withDays(DynoDays.changed(session.days(), day, change));
    }
}
