package org.pullproof.app;

import java.time.LocalDateTime;
import java.util.List;
import java.util.function.BiFunction;
import org.pullproof.car.Fact;
import org.pullproof.files.BadFileException;
import org.pullproof.health.Reading;
import org.pullproof.session.Edit;
import org.pullproof.session.Session;
import org.pullproof.tuneup.Step;
import org.pullproof.tuneup.StepGraph;
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
     * Ticks a step. What it changes on the cylinders is kept as work done among the readings; the start gate keeps the odometer.
     *
     * @throws IllegalArgumentException with a sentence if there is no such step, or it still waits
     */
    public OpenSession tick(OpenSession open, String step, LocalDateTime when) throws BadFileException {
        return desk.edit(open, new Edit("Tick step " + step, session -> {
            StepGraph graph = graph(session);
            Session ticked = session.withTuneUp(new Ticking(graph).tick(session.tuneUp(), step, when));
            return consequences(ticked, graph.require(step), when);
        }));
    }

    private static Session consequences(Session session, Step step, LocalDateTime when) {
        if (step.kind() == Step.Kind.START_GATE) {
            TuneUp tuneUp = session.tuneUp();
            return session.withTuneUp(
                    tuneUp.withBench(tuneUp.bench().withOdometer(session.car().quantity(Fact.ODOMETER))));
        }
        return step.outfit()
                .work()
                .map(work -> RecordWork.with(session, work, List.of(), noteOf(step), when))
                .orElse(session);
    }

    private static String noteOf(Step step) {
        return "tune-up, step " + step.id();
    }

    /**
     * Takes a tick away, and with it the work that the tick kept.
     *
     * @throws IllegalArgumentException with a sentence if there is no such step, or a ticked one needs it
     */
    public OpenSession untick(OpenSession open, String step) throws BadFileException {
        return desk.edit(open, new Edit("Take back step " + step, session -> {
            StepGraph graph = graph(session);
            return withoutWork(
                    session.withTuneUp(new Ticking(graph).untick(session.tuneUp(), step)), noteOf(graph.require(step)));
        }));
    }

    private static Session withoutWork(Session session, String note) {
        return session.withReadings(session.readings().stream()
                .filter(reading ->
                        !(reading instanceof Reading.Work work && work.note().equals(note)))
                .toList());
    }

    private StepGraph graph(Session session) {
        return graphs.of(session.profile(), session.tuneUp());
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
        return session.withTuneUp(act.apply(new Ticking(graph(session)), session.tuneUp()));
    }
}
