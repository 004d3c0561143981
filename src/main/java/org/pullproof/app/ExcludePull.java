package org.pullproof.app;

import java.util.Optional;
import org.pullproof.dyno.DynoDays;
import org.pullproof.dyno.Pull;
import org.pullproof.files.BadFileException;
import org.pullproof.session.Edit;
import org.pullproof.session.Session;

/** Takes a pull out of every judgement, with the reason, or lets it count again. It stays in the session and in the report. */
public final class ExcludePull {
    private final SessionDesk desk;

    public ExcludePull(SessionDesk desk) {
        this.desk = desk;
    }

    /**
     * @param pull id of the pull
     * @param reason why it does not count, in words
     * @throws IllegalArgumentException if there is no such pull, or no reason
     * @throws BadFileException if the session could not be written
     */
    public OpenSession exclude(OpenSession open, String pull, String reason) throws BadFileException {
        if (reason.isBlank()) {
            throw new IllegalArgumentException("A pull is excluded with a reason: write why it does not count.");
        }
        return edit(open, "Exclude " + pull, pull, Optional.of(reason.strip()));
    }

    /**
     * @param pull id of the pull
     * @throws IllegalArgumentException if there is no such pull
     * @throws BadFileException if the session could not be written
     */
    public OpenSession countAgain(OpenSession open, String pull) throws BadFileException {
        return edit(open, "Count " + pull + " again", pull, Optional.empty());
    }

    private OpenSession edit(OpenSession open, String name, String pull, Optional<String> reason)
            throws BadFileException {
        return desk.edit(open, new Edit(name, session -> {
            Pull next = find(session, pull).withExcluded(reason);
            return session.withDays(DynoDays.replaced(session.days(), next));
        }));
    }

    private static Pull find(Session session, String id) {
        return session.days().stream()
                .flatMap(day -> day.pulls().stream())
                .filter(pull -> pull.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("There is no pull \"" + id + "\" in this session."));
    }
}
