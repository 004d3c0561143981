package org.pullproof.ui;

import java.nio.file.Path;
import org.pullproof.advice.Appraisal;
import org.pullproof.app.OpenSession;
import org.pullproof.app.ShareSession;
import org.pullproof.app.Toolbox;
import org.pullproof.files.BadFileException;
import org.pullproof.ui.shell.Look;

/** Loads what a person wants to open: a session as it lies, a demo as a copy, a shared one unpacked. Slow, so never on the FX thread. */
final class SessionLoader {
    private final Toolbox tools;
    private final Look look;

    SessionLoader(Toolbox tools, Look look) {
        this.tools = tools;
        this.look = look;
    }

    /**
     * A session ready to be shown.
     *
     * @param said what has to be said of it at the foot, or empty
     */
    record Loaded(OpenSession open, Appraisal appraisal, String said) {}

    /**
     * @throws BadFileException if it cannot be opened
     */
    Loaded load(Path session) throws BadFileException {
        if (tools.share().isShared(session)) {
            Path unpacked = tools.share().unpack(session);
            return load(unpacked, ShareSession.unpackedTo(unpacked));
        }
        return load(tools.demos().holds(session) ? tools.demos().copy(session) : session, "");
    }

    private Loaded load(Path own, String said) throws BadFileException {
        OpenSession open = tools.desk().openToEdit(own);
        String problem =
                open.problems().stream().findFirst().map(Object::toString).orElse("");
        return new Loaded(open, tools.appraise().of(open, look.figures()), (said + " " + problem).strip());
    }
}
