package org.pullproof.app;

import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.pullproof.files.BadFileException;
import org.pullproof.session.Edit;
import org.pullproof.session.Session;
import org.pullproof.tuneup.BaseSettings;
import org.pullproof.tuneup.Setting;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;

/** Keeps how the engine is set, and saves that as a setup. */
public final class RecordSettings {
    /** The level that timing sweeps vary: total timing at full throttle. */
    private static final String TIMING = "timing";

    private final SessionDesk desk;

    public RecordSettings(SessionDesk desk) {
        this.desk = desk;
    }

    /**
     * @param name of the edit, for undo
     */
    public OpenSession edit(OpenSession open, String name, UnaryOperator<BaseSettings> change) throws BadFileException {
        return desk.edit(open, new Edit(name, session -> {
            var bench = session.tuneUp().bench();
            return session.withTuneUp(session.tuneUp().withBench(bench.withSettings(change.apply(bench.settings()))));
        }));
    }

    /**
     * Saves the settings as a setup, which the engine is in from now on.
     *
     * @throws IllegalArgumentException with a sentence if no setting is told, or a setup of that name has others
     */
    public OpenSession keepAs(OpenSession open, String setup, LocalDateTime when) throws BadFileException {
        return desk.edit(open, new Edit("Save the settings as " + setup, session -> kept(session, setup, when)));
    }

    private static Session kept(Session session, String setup, LocalDateTime when) {
        Map<String, Quantity> levels = levels(session.tuneUp().bench().settings());
        if (levels.isEmpty()) {
            throw new IllegalArgumentException(
                    "There is nothing to save yet: tell at least one setting, such as the base timing.");
        }
        return ChangeSetup.applied(
                session,
                new ChangeSetup.Wanted(setup, "settings of the tune-up", levels, Optional.empty(), when, Set.of()));
    }

    private static Map<String, Quantity> levels(BaseSettings settings) {
        Map<String, Quantity> levels = new LinkedHashMap<>();
        settings.totalDegrees().ifPresent(total -> levels.put(TIMING, Quantity.of(total, Unit.DEGREE)));
        settings.values().forEach((Setting setting, Quantity value) -> levels.put(setting.key(), value));
        return levels;
    }
}
