package org.pullproof.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.pullproof.files.BadFileException;
import org.pullproof.files.IncomingFile;
import org.pullproof.files.Reason;
import org.pullproof.files.StepsFile;
import org.pullproof.files.WholeFile;
import org.pullproof.session.Edit;
import org.pullproof.session.Session;
import org.pullproof.tuneup.Step;
import org.pullproof.tuneup.StepEdit;
import org.pullproof.tuneup.StepGraph;
import org.pullproof.tuneup.StepGraphs;

/** Gives a car steps of its own, edited from those of its kind of engine, or takes them away again. */
public final class EditSteps {
    private final SessionDesk desk;
    private final StepGraphs graphs;
    private final StepsFile file;

    public EditSteps(SessionDesk desk, StepGraphs graphs, StepsFile file) {
        this.desk = desk;
        this.graphs = graphs;
        this.file = file;
    }

    /** The steps this car follows now. */
    public StepGraph of(Session session) {
        return graphs.of(session.profile(), session.tuneUp());
    }

    /**
     * Writes the steps this car follows to a file, to be edited and read again.
     *
     * @throws BadFileException if it cannot be written; an old file is then as it was
     */
    public void write(Session session, Path target) throws BadFileException {
        try {
            new WholeFile().write(target, file.bytes(of(session)));
        } catch (IOException failed) {
            throw new BadFileException(target.toString(), "", "it could not be written: " + Reason.of(failed) + ".");
        }
    }

    /**
     * Follows the steps of a file from now on.
     *
     * @throws BadFileException naming file, place and what would be right: a missing need, a circle of needs, a ticked step that
     *     is gone
     */
    public OpenSession read(OpenSession open, Path source) throws BadFileException {
        IncomingFile incoming = IncomingFile.read(source);
        StepGraph steps = file.read(source.toString(), incoming.bytes());
        try {
            return follow(open, "Follow the steps of " + incoming.name(), Optional.of(steps));
        } catch (IllegalArgumentException refused) {
            throw new BadFileException(source.toString(), "steps", String.valueOf(refused.getMessage()));
        }
    }

    /** Goes back to the program's own steps. */
    public OpenSession reset(OpenSession open) throws BadFileException {
        return follow(open, "Follow the program's own steps", Optional.empty());
    }

    /**
     * Puts an edited step in the place of the one with its id.
     *
     * @throws IllegalArgumentException with a sentence if there is no such step, or the steps no longer stand in an order
     */
    public OpenSession change(OpenSession open, Step step) throws BadFileException {
        return desk.edit(
                open,
                new Edit(
                        "Edit step " + step.id(),
                        session -> session.withTuneUp(
                                session.tuneUp().withOwn(Optional.of(StepEdit.replaced(of(session), step))))));
    }

    private OpenSession follow(OpenSession open, String name, Optional<StepGraph> steps) throws BadFileException {
        return desk.edit(open, new Edit(name, session -> {
            StepEdit.requireTold(steps.orElseGet(() -> graphs.of(session.profile())), session.tuneUp());
            return session.withTuneUp(session.tuneUp().withOwn(steps));
        }));
    }
}
