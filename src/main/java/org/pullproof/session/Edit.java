package org.pullproof.session;

import java.util.function.UnaryOperator;

/**
 * A change of the document with the name that undo shows.
 *
 * @param name in words: "Record compression, cylinder 3"
 * @param step makes the next document; an {@link IllegalArgumentException} from it leaves everything as it was
 */
public record Edit(String name, UnaryOperator<Session> step) {
    public Session applyTo(Session session) {
        return step.apply(session);
    }
}
