package org.pullproof.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.pullproof.dyno.Trace;
import org.pullproof.session.History;
import org.pullproof.session.Problem;
import org.pullproof.session.Session;

/**
 * A session that is open: where it lies, its document with undo, and the figures of its pulls. Immutable; see {@link
 * SessionDesk} for what makes the next one.
 *
 * @param folder the session's folder
 * @param history the document
 * @param traces figures of the pulls by {@link org.pullproof.dyno.Pull#id()}; a pull whose file is lost has none
 * @param problems what could not be read, without stopping the rest
 */
public record OpenSession(Path folder, History history, Map<String, Trace> traces, List<Problem> problems) {
    public OpenSession {
        traces = Map.copyOf(traces);
        problems = List.copyOf(problems);
    }

    /** Whether nothing was edited yet since it was opened. */
    boolean isUntouched() {
        return history.past().isEmpty() && history.future().isEmpty();
    }

    public Session session() {
        return history.present();
    }
}
