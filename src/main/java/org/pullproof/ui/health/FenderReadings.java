package org.pullproof.ui.health;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.pullproof.app.OpenSession;
import org.pullproof.health.Reading;
import org.pullproof.ui.shell.SessionViewModel;

/**
 * The readings there are, as fender mode sees them: those on the disk and those on their way there, so that the next key need not
 * wait for the disk. When nothing is on its way, the disk counts.
 */
final class FenderReadings {
    private final SessionViewModel session;
    private final HealthActs acts;
    private List<Reading> readings;
    private Consumer<Optional<Reading>> onDisk = lost -> {};
    private Consumer<String> onRefused = sentence -> {};

    FenderReadings(SessionViewModel session, HealthActs acts) {
        this.session = session;
        this.acts = acts;
        this.readings = of(session.open());
        session.openProperty().addListener((of, before, after) -> agree());
    }

    private static List<Reading> of(OpenSession open) {
        return open.session().readings();
    }

    /**
     * @param disk what happens when the disk was read anew, with the reading that is no more, if one was taken back
     * @param refused receives the sentence if a reading could not be kept
     */
    void listen(Consumer<Optional<Reading>> disk, Consumer<String> refused) {
        onDisk = disk;
        onRefused = refused;
    }

    List<Reading> all() {
        return readings;
    }

    void keep(Reading reading) {
        List<Reading> longer = new ArrayList<>(readings);
        longer.add(reading);
        readings = List.copyOf(longer);
        session.act(acts.record(reading), this::refused);
    }

    void correct(Reading before, Reading after) {
        List<Reading> changed = new ArrayList<>(readings);
        changed.set(changed.lastIndexOf(before), after);
        readings = List.copyOf(changed);
        session.act(acts.correct(before, after), this::refused);
    }

    private void refused(String sentence) {
        agree();
        onRefused.accept(sentence);
    }

    private void agree() {
        if (!session.isActing()) {
            List<Reading> before = readings;
            readings = of(session.open());
            onDisk.accept(lost(before));
        }
    }

    private Optional<Reading> lost(List<Reading> before) {
        return before.stream().filter(reading -> !readings.contains(reading)).reduce((one, next) -> next);
    }
}
