package org.pullproof.app;

import java.time.LocalDateTime;
import java.util.List;
import java.util.function.BiFunction;
import org.pullproof.files.BadFileException;
import org.pullproof.session.Edit;
import org.pullproof.session.Session;
import org.pullproof.tuneup.StepGraphs;
import org.pullproof.tuneup.Ticking;
import org.pullproof.tuneup.TuneUp;

/** Ticks steps of the tune-up, takes ticks away, and notes what is back on the car. */
public final class TickStep {
    private final SessionDesk desk;
    private final StepGraphs graphs;

    public TickStep(SessionDesk desk, StepGraphs graphs) {
        this.desk = desk;
        this.graphs = graphs;
    }

    /**
     * @throws IllegalArgumentException with a sentence if there is no such step, or it still waits
     */
    public OpenSession tick(OpenSession open, String step, LocalDateTime when) throws BadFileException {
        return edit(open, "Tick step " + step, (ticking, tuneUp) -> ticking.tick(tuneUp, step, when));
    }

    /**
     * @throws IllegalArgumentException with a sentence if there is no such step, or a ticked one needs it
     */
    public OpenSession untick(OpenSession open, String step) throws BadFileException {
        return edit(open, "Take back step " + step, (ticking, tuneUp) -> ticking.untick(tuneUp, step));
    }

    /**
     * @throws IllegalArgumentException with a sentence if the tune-up knows no such part
     */
    public OpenSession putBack(OpenSession open, String part) throws BadFileException {
        return edit(open, "Put back: " + part, (ticking, tuneUp) -> ticking.back(tuneUp, part));
    }

    /**
     * @throws IllegalArgumentException with a sentence if the tune-up knows no such part, or a ticked step fitted it
     */
    public OpenSession takeOff(OpenSession open, String part) throws BadFileException {
        return edit(open, "Off again: " + part, (ticking, tuneUp) -> ticking.off(tuneUp, part));
    }

    /**
     * @throws IllegalArgumentException with a sentence if the tune-up knows no such part, or no reason is given
     */
    public OpenSession leaveOff(OpenSession open, String part, String reason) throws BadFileException {
        return edit(open, "Leave off: " + part, (ticking, tuneUp) -> ticking.leaveOff(tuneUp, part, reason));
    }

    /**
     * @param steps a plan by its name, step ids, or "all"
     * @throws IllegalArgumentException with a sentence if there is no such plan or step
     */
    public OpenSession want(OpenSession open, List<String> steps) throws BadFileException {
        return edit(
                open,
                "Choose the tune-up: " + String.join(", ", steps),
                (ticking, tuneUp) -> ticking.want(tuneUp, steps));
    }

    private OpenSession edit(OpenSession open, String name, BiFunction<Ticking, TuneUp, TuneUp> act)
            throws BadFileException {
        return desk.edit(open, new Edit(name, session -> with(session, act)));
    }

    private Session with(Session session, BiFunction<Ticking, TuneUp, TuneUp> act) {
        return session.withTuneUp(act.apply(new Ticking(graphs.of(session.profile())), session.tuneUp()));
    }
}
