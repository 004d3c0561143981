package org.pullproof.ui.health;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.pullproof.engine.EngineProfile;
import org.pullproof.health.OddReading;
import org.pullproof.health.Reading;
import org.pullproof.health.TestKind;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.units.Sentence;

/**
 * Fender mode: one number, big; Enter keeps it on the disk at once and goes on in the order of the test. An odd reading is kept
 * too, and answered by one sentence before Enter goes on. The run is read from the session, so after a fall of the power it goes
 * on where it was.
 */
public final class FenderViewModel {
    private static final int MOST_DIGITS = 6;

    /** Where fender mode stands. */
    public enum Phase {
        CLOSED,
        /** Conditions and cautions. */
        BEFORE,
        READING,
        /** A leak is kept; where is the air heard? */
        AIR,
        ALL_READ
    }

    private final SessionViewModel session;
    private final Supplier<LocalDate> today;
    private final FenderCautions cautions;
    private final FenderReadings readings;
    private final FenderSetting setting;
    private final FenderCourse course;
    private final FenderKeeping keeping;
    private final ReadOnlyObjectWrapper<Phase> phase = new ReadOnlyObjectWrapper<>(Phase.CLOSED);
    private final ReadOnlyObjectWrapper<FenderScreen> screen;

    private OptionalInt wanted = OptionalInt.empty();
    private FenderEntry entry = FenderEntry.empty(false);
    private FenderAir air = FenderAir.NOT_LISTENED;
    private Optional<Sentence> said = Optional.empty();
    private boolean marked;

    /**
     * @param odd tells by the session's limits whether a reading just taken is odd
     * @param today the day it is where the program runs
     */
    public FenderViewModel(
            SessionViewModel session,
            ReadingRules rules,
            HealthActs acts,
            Supplier<OddReading> odd,
            FenderCautions cautions,
            Supplier<LocalDate> today) {
        this.session = session;
        this.cautions = cautions;
        this.today = today;
        this.readings = new FenderReadings(session, acts);
        this.setting =
                new FenderSetting(this::engine, () -> session.look().figures().system(), rules);
        this.course = new FenderCourse(this::engine, setting, readings);
        this.keeping = new FenderKeeping(rules, odd, setting, course, readings);
        setting.begin(TestKind.COMPRESSION_DRY, readings.all(), today.get());
        this.screen = new ReadOnlyObjectWrapper<>(words().screen());
        readings.listen(this::onDisk, this::refuse);
    }

    public ReadOnlyObjectProperty<Phase> phaseProperty() {
        return phase.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<FenderScreen> screenProperty() {
        return screen.getReadOnlyProperty();
    }

    public FenderScreen screen() {
        return screen.get();
    }

    /** What is told before the first reading. */
    public FenderSetting setting() {
        return setting;
    }

    /** The cautions of the test, before its first reading. */
    public List<String> cautions() {
        return cautions.before().apply(setting.test());
    }

    SessionViewModel session() {
        return session;
    }

    EngineProfile engine() {
        return session.open().session().profile();
    }

    /**
     * Opens fender mode before the first reading.
     *
     * @param cylinder to begin with, empty for the first that is not read
     */
    public void open(TestKind test, OptionalInt cylinder) {
        wanted = cylinder;
        choose(FenderSetting.TESTS.contains(test) ? test : TestKind.COMPRESSION_DRY);
        phase.set(Phase.BEFORE);
    }

    /** Chooses another test before the first reading. */
    public void choose(TestKind test) {
        setting.begin(test, readings.all(), today.get());
        show();
    }

    /** Conditions and cautions are read: the first number may come. */
    public void begin() {
        course.begin(wanted);
        phase.set(Phase.READING);
        arrive();
    }

    /** All that was kept stays. */
    public void leave() {
        phase.set(Phase.CLOSED);
    }

    /** Conditions and cautions once more. */
    public void conditions() {
        wanted = phase.get() == Phase.ALL_READ ? OptionalInt.empty() : OptionalInt.of(course.cylinder());
        phase.set(Phase.BEFORE);
    }

    /** A figure, a point or a letter. */
    public void type(char typed) {
        char key = Character.toUpperCase(typed);
        if (phase.get() == Phase.AIR) {
            air = air.with(key);
        } else if (phase.get() == Phase.READING) {
            if (Character.isDigit(key) || key == '.' || key == ',') {
                digit(key);
            } else {
                letter(key);
            }
        }
        show();
    }

    private void digit(char key) {
        List<String> choices = setting.choices();
        say(Optional.empty(), false);
        if (choices.isEmpty()) {
            entry = entry.typed(key, MOST_DIGITS);
        } else if (Character.isDigit(key) && Character.digit(key, 10) >= 1) {
            int number = Character.digit(key, 10);
            if (number <= choices.size()) {
                entry = entry.with(choices.get(number - 1));
            }
        }
    }

    private void letter(char key) {
        switch (key) {
            case 'R' -> again();
            case 'W' -> wet();
            case 'F' -> firstStroke();
            case 'S' -> goOn();
            default -> {}
        }
    }

    /** Takes the last digit away. */
    public void erase() {
        entry = entry.erased();
        say(Optional.empty(), false);
        show();
    }

    /** Keeps what is typed and goes on; what is kept already is left as it is. */
    public void enter() {
        switch (phase.get()) {
            case BEFORE -> begin();
            case READING -> enterReading();
            case AIR -> keepAir();
            case ALL_READ, CLOSED -> {}
        }
        show();
    }

    private void enterReading() {
        if (entry.kept()) {
            afterKept();
        } else if (entry.firstStroke()) {
            keepFirstStroke();
        } else if (entry.text().isEmpty()) {
            mark("Nothing is typed yet; S goes on without a reading.");
        } else if (keep()) {
            Optional<String> doubt = keeping.doubt(entry.wet());
            if (setting.test() == TestKind.LEAKDOWN) {
                listen();
                doubt.ifPresent(this::mark);
            } else if (doubt.isPresent()) {
                mark(doubt.get() + " Press **R** and take it once more before you believe it; Enter goes on.");
            } else {
                goOn();
            }
        }
    }

    private void afterKept() {
        if (setting.test() == TestKind.LEAKDOWN) {
            listen();
        } else {
            goOn();
        }
    }

    private void keepFirstStroke() {
        try {
            entry = entry.text().isEmpty() ? entry.withoutFirst() : entry.withFirst(setting.read(entry.text()));
            kept().filter(reading -> !entry.repeats())
                    .ifPresent(reading -> entry = entry.with(FenderFigures.of(reading, setting.unit())));
            say(Optional.empty(), false);
        } catch (IllegalArgumentException unreadable) {
            refuse(String.valueOf(unreadable.getMessage()));
        }
    }

    /** Keeps what is typed; returns whether it is kept. */
    private boolean keep() {
        try {
            Optional<FenderEntry> kept = keeping.keep(entry);
            kept.ifPresent(next -> entry = next);
            return kept.isPresent();
        } catch (IllegalArgumentException unreadable) {
            refuse(String.valueOf(unreadable.getMessage()));
            return false;
        }
    }

    private void again() {
        boolean typed = !entry.kept() && !entry.text().isEmpty();
        if (setting.test() == TestKind.PLUG || (typed && !keep())) {
            return;
        }
        if (kept().isEmpty()) {
            mark("Nothing is read at cylinder " + course.cylinder() + " yet.");
            return;
        }
        entry = entry.again();
        say(
                Optional.of(
                        new Sentence("Cylinder **" + course.cylinder() + "** once more. The reading before it stays.")),
                false);
    }

    private void wet() {
        if (setting.test() == TestKind.COMPRESSION_DRY) {
            boolean wet = !entry.wet();
            boolean untouched = entry.kept() || entry.text().isEmpty();
            entry = untouched ? keeping.keptOrEmpty(wet) : entry.otherWet();
            say(
                    entry.wet()
                            ? Optional.of(new Sentence(
                                    "A **wet** reading. A spoon of oil, no more: too much of it locks the cylinder."))
                            : Optional.empty(),
                    false);
        }
    }

    private void firstStroke() {
        if (isCompression()) {
            entry = entry.askFirst();
            say(Optional.of(new Sentence("The reading after the **first stroke**; then the highest.")), false);
        }
    }

    boolean isCompression() {
        return setting.test() == TestKind.COMPRESSION_DRY || setting.test() == TestKind.COMPRESSION_WET;
    }

    private void listen() {
        air = FenderAir.of(leak());
        phase.set(Phase.AIR);
        say(
                Optional.of(new Sentence("Where is the air heard? **Several places** may be chosen; Enter goes on.")),
                false);
    }

    private Reading.Leakdown leak() {
        return (Reading.Leakdown) kept().orElseThrow();
    }

    private void keepAir() {
        Reading.Leakdown before = leak();
        Reading.Leakdown after = air.added(before);
        if (!after.equals(before)) {
            readings.correct(before, after);
        }
        goOn();
    }

    private void goOn() {
        course.next();
        phase.set(course.isOver() ? Phase.ALL_READ : Phase.READING);
        arrive();
    }

    /** One cylinder back; what is kept there can be typed over. */
    public void back() {
        if (phase.get() == Phase.READING || phase.get() == Phase.ALL_READ) {
            course.back();
        }
        phase.set(Phase.READING);
        arrive();
    }

    private void arrive() {
        if (phase.get() == Phase.READING) {
            entry = keeping.keptOrEmpty(setting.test() == TestKind.COMPRESSION_WET);
            say(words().onArrival(), false);
        } else {
            entry = FenderEntry.empty(false);
            say(
                    Optional.of(new Sentence("**All cylinders are read** and kept. ← goes back to one, Esc leaves.")),
                    false);
        }
        show();
    }

    /** Takes the last edit back. */
    public void undo() {
        session.undo();
    }

    /** Does it again. */
    public void redo() {
        session.redo();
    }

    /** The disk was read; where a reading of this run was taken back, its cylinder is read next. */
    private void onDisk(Optional<Reading> lost) {
        boolean reading = phase.get() != Phase.CLOSED && phase.get() != Phase.BEFORE;
        lost.filter(gone -> reading && course.goTo(gone)).ifPresent(gone -> {
            phase.set(Phase.READING);
            arrive();
        });
        show();
    }

    private void refuse(String sentence) {
        mark(sentence);
        show();
    }

    private void mark(String sentence) {
        say(Optional.of(new Sentence(sentence)), true);
    }

    private void say(Optional<Sentence> sentence, boolean asksForALook) {
        said = sentence;
        marked = asksForALook;
    }

    FenderCourse course() {
        return course;
    }

    TestKind kind(boolean wet) {
        return keeping.kind(wet);
    }

    private Optional<Reading> kept() {
        return keeping.kept(entry.wet());
    }

    FenderEntry entry() {
        return entry;
    }

    FenderAir air() {
        return air;
    }

    Optional<Sentence> said() {
        return said;
    }

    boolean isMarked() {
        return marked;
    }

    String inHand() {
        return cautions.inHand().apply(kind(entry.wet()));
    }

    private FenderWords words() {
        return new FenderWords(this);
    }

    private void show() {
        screen.set(words().screen());
    }
}
