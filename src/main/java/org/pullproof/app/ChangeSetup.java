package org.pullproof.app;

import java.text.Normalizer;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.pullproof.changes.Change;
import org.pullproof.changes.RotatingPart;
import org.pullproof.engine.Setup;
import org.pullproof.files.BadFileException;
import org.pullproof.session.Edit;
import org.pullproof.session.Session;
import org.pullproof.units.Money;
import org.pullproof.units.Quantity;

/** Brings the engine into another setup: a new one reached by a change from the present one, or back to an earlier one. */
public final class ChangeSetup {
    /**
     * The setup wanted and how it is reached.
     *
     * @param name of the setup; one that is known already is gone back to
     * @param what what is done, in words; empty says the setup's name
     * @param levels numeric settings of that setup by name
     * @param cost what the change costs, if known
     * @param time when
     * @param rotating the rotating parts it touches
     */
    public record Wanted(
            String name,
            String what,
            Map<String, Quantity> levels,
            Optional<Money> cost,
            LocalDateTime time,
            Set<RotatingPart> rotating) {
        public Wanted {
            levels = Map.copyOf(levels);
            rotating = Set.copyOf(rotating);
        }
    }

    private final SessionDesk desk;

    public ChangeSetup(SessionDesk desk) {
        this.desk = desk;
    }

    /**
     * @throws IllegalArgumentException with a sentence if a level contradicts what is recorded
     * @throws BadFileException if the session could not be written
     */
    public OpenSession to(OpenSession open, Wanted wanted) throws BadFileException {
        return desk.edit(open, new Edit("Change to " + wanted.name(), session -> applied(session, wanted)));
    }

    /**
     * The session with that setup present. Staying in the present setup records no change.
     *
     * @throws IllegalArgumentException with a sentence if a level contradicts what is recorded
     */
    public static Session applied(Session session, Wanted wanted) {
        Optional<Setup> known = find(session, wanted.name());
        Setup setup = known.map(there -> withLevels(there, wanted.levels())).orElseGet(() -> made(session, wanted));
        List<Setup> setups = new ArrayList<>(session.setups());
        known.ifPresentOrElse(there -> setups.set(setups.indexOf(there), setup), () -> setups.add(setup));
        return session.withSetups(setups, setup.id(), changes(session, setup, wanted));
    }

    /** Finds a setup by its name or its id, whatever the case. */
    public static Optional<Setup> find(Session session, String nameOrId) {
        String wanted = nameOrId.strip();
        return session.setups().stream()
                .filter(setup ->
                        setup.name().equalsIgnoreCase(wanted) || setup.id().equalsIgnoreCase(wanted))
                .findFirst();
    }

    private static List<Change> changes(Session session, Setup setup, Wanted wanted) {
        List<Change> changes = new ArrayList<>(session.changes());
        if (!setup.id().equals(session.presentSetup())) {
            String what = wanted.what().isBlank() ? setup.name() : wanted.what().strip();
            changes.add(new Change(
                    session.presentSetup(), setup.id(), what, wanted.time(), wanted.cost(), wanted.rotating()));
        }
        return changes;
    }

    private static Setup made(Session session, Wanted wanted) {
        return new Setup(freeId(session, wanted.name()), wanted.name().strip(), wanted.levels(), "");
    }

    private static String freeId(Session session, String name) {
        String id = idOf(name);
        String free = id;
        for (int number = 2; session.setup(free).isPresent(); number++) {
            free = id + "_" + number;
        }
        return free;
    }

    /** "timing 32°" becomes {@code timing-32}: letters and digits of any script, joined by hyphens. */
    private static String idOf(String name) {
        String plain = Normalizer.normalize(name.strip().toLowerCase(Locale.ROOT), Normalizer.Form.NFC)
                .replaceAll("[^\\p{L}\\p{N}]+", "-")
                .replaceAll("^-|-$", "");
        return plain.isEmpty() ? "setup" : plain;
    }

    private static Setup withLevels(Setup setup, Map<String, Quantity> levels) {
        Map<String, Quantity> all = new LinkedHashMap<>(setup.levels());
        levels.forEach((factor, level) -> {
            Quantity recorded = all.putIfAbsent(factor, level);
            if (recorded != null && recorded.in(recorded.unit()) != si(recorded, level)) {
                throw new IllegalArgumentException("setup \"" + setup.name() + "\" has " + factor + " " + recorded
                        + " recorded, not " + level + ": give the new state a name of its own.");
            }
        });
        return new Setup(setup.id(), setup.name(), all, setup.note());
    }

    private static double si(Quantity recorded, Quantity level) {
        return level.dimension() == recorded.dimension() ? level.in(recorded.unit()) : Double.NaN;
    }
}
