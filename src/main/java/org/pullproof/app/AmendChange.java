package org.pullproof.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.pullproof.changes.Change;
import org.pullproof.changes.RotatingPart;
import org.pullproof.files.BadFileException;
import org.pullproof.session.Edit;
import org.pullproof.session.Session;
import org.pullproof.units.Money;

/** Puts right what is recorded of a change: what was done, what it cost, which rotating parts it touched. */
public final class AmendChange {
    /**
     * What is now known of the change; what is absent stays as it was.
     *
     * @param what in words
     * @param cost what it cost; an empty one forgets the cost
     * @param rotating rotating parts it touched
     */
    public record Amendment(
            Optional<String> what, Optional<Optional<Money>> cost, Optional<Set<RotatingPart>> rotating) {
        /** Whether there is nothing to put right. */
        public boolean isEmpty() {
            return what.isEmpty() && cost.isEmpty() && rotating.isEmpty();
        }

        Change applied(Change change) {
            return new Change(
                    change.from(),
                    change.to(),
                    what.map(String::strip).filter(words -> !words.isEmpty()).orElse(change.what()),
                    change.time(),
                    cost.orElse(change.cost()),
                    rotating.map(Set::copyOf).orElse(change.rotating()));
        }
    }

    private final SessionDesk desk;

    public AmendChange(SessionDesk desk) {
        this.desk = desk;
    }

    /**
     * Puts right the change by which a setup came to be.
     *
     * @param setup id of the setup
     * @throws IllegalArgumentException with a sentence if no change led to it
     * @throws BadFileException if the session could not be written
     */
    public OpenSession madeInto(OpenSession open, String setup, Amendment amendment) throws BadFileException {
        applied(open.session(), setup, amendment);
        return desk.edit(
                open,
                new Edit(
                        "Put right the change to " + name(open.session(), setup),
                        session -> applied(session, setup, amendment)));
    }

    /** The session with that change put right. */
    public static Session applied(Session session, String setup, Amendment amendment) {
        List<Change> changes = new ArrayList<>(session.changes());
        int place = placeOf(session, setup)
                .orElseThrow(() -> new IllegalArgumentException("No change is recorded that led to \""
                        + name(session, setup) + "\": it is the setup the session began with."));
        changes.set(place, amendment.applied(changes.get(place)));
        return session.withSetups(session.setups(), session.presentSetup(), changes);
    }

    /** The first change that led to it: later ones only came back. */
    private static Optional<Integer> placeOf(Session session, String setup) {
        for (int i = 0; i < session.changes().size(); i++) {
            if (session.changes().get(i).to().equals(setup)) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    private static String name(Session session, String setup) {
        return session.setup(setup).map(known -> known.name()).orElse(setup);
    }
}
