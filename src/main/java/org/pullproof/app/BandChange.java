package org.pullproof.app;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pullproof.car.Fact;
import org.pullproof.session.Note;
import org.pullproof.session.Session;

/**
 * Tells the band that power is compared over. Once it was told and pulls are there it stays, since every call hangs on it; it is
 * changed with a reason behind a semicolon, which is noted.
 */
final class BandChange {
    private final String band;
    private final String reason;

    /**
     * @param typed "2600-5000rpm", or with a reason "2600-5200rpm; it now pulls higher"
     */
    BandChange(String typed) {
        int end = typed.indexOf(';');
        this.band = (end < 0 ? typed : typed.substring(0, end)).strip();
        this.reason = end < 0 ? "" : typed.substring(end + 1).strip();
    }

    /**
     * @throws IllegalArgumentException if it is no band, or if another one is fixed and no reason is given
     */
    Session on(Session session, LocalDateTime now) {
        Optional<String> before = session.car().told(Fact.BAND);
        Session next = session.withCar(session.car().with(Fact.BAND, band));
        boolean changed = before.isPresent() && !before.equals(next.car().told(Fact.BAND));
        boolean pulled = session.days().stream().anyMatch(day -> !day.pulls().isEmpty());
        if (!changed || !pulled) {
            return next;
        }
        if (reason.isEmpty()) {
            throw new IllegalArgumentException("band: it is fixed at " + before.get()
                    + " and pulls are judged by it; to change it, write the reason behind a semicolon, such as"
                    + " 2600-5200rpm; it now pulls to 5,400");
        }
        List<Note> notes = new ArrayList<>(session.notes());
        notes.add(new Note(
                now,
                "Band changed from " + before.get() + " to "
                        + next.car().told(Fact.BAND).orElse("what all pulls cover") + ": " + reason));
        return next.withNotes(notes);
    }
}
