package org.pullproof.app;

import java.time.LocalDateTime;
import java.util.function.BiFunction;
import org.pullproof.files.BadFileException;
import org.pullproof.session.Edit;
import org.pullproof.session.Session;
import org.pullproof.tuneup.Shelving;
import org.pullproof.tuneup.StepGraphs;
import org.pullproof.tuneup.TuneUp;

/** Keeps the off-car shelf: what no step names, where things lie, what is back on some cylinders. */
public final class ShelveParts {
    private final SessionDesk desk;
    private final StepGraphs graphs;

    public ShelveParts(SessionDesk desk, StepGraphs graphs) {
        this.desk = desk;
        this.graphs = graphs;
    }

    /**
     * @throws IllegalArgumentException with a sentence if a step takes it off, or it has no name
     */
    public OpenSession add(OpenSession open, String name, LocalDateTime when) throws BadFileException {
        return edit(open, "Off the car: " + name, (shelving, session) -> shelving.add(session.tuneUp(), name, when));
    }

    /**
     * @param words where it lies, what belongs to it; empty forgets the note
     * @throws IllegalArgumentException with a sentence if the tune-up knows no such part
     */
    public OpenSession note(OpenSession open, String part, String words) throws BadFileException {
        return edit(open, "Note on " + part, (shelving, session) -> shelving.note(session.tuneUp(), part, words));
    }

    /**
     * Notes that a part is back on one cylinder.
     *
     * @throws IllegalArgumentException with a sentence if not every cylinder has one, or there is no such cylinder
     */
    public OpenSession fit(OpenSession open, String part, int cylinder) throws BadFileException {
        return edit(
                open,
                "Back on cylinder " + cylinder + ": " + part,
                (shelving, session) -> shelving.fit(
                        session.tuneUp(),
                        part,
                        session.profile().requireCylinder(cylinder),
                        session.profile().cylinders()));
    }

    /**
     * Notes that a part is off one cylinder again.
     *
     * @throws IllegalArgumentException as {@link #fit} does
     */
    public OpenSession unfit(OpenSession open, String part, int cylinder) throws BadFileException {
        return edit(
                open,
                "Off cylinder " + cylinder + " again: " + part,
                (shelving, session) ->
                        shelving.unfit(session.tuneUp(), part, session.profile().requireCylinder(cylinder)));
    }

    private OpenSession edit(OpenSession open, String name, BiFunction<Shelving, Session, TuneUp> act)
            throws BadFileException {
        return desk.edit(
                open,
                new Edit(
                        name,
                        session -> session.withTuneUp(
                                act.apply(new Shelving(graphs.of(session.profile(), session.tuneUp())), session))));
    }
}
