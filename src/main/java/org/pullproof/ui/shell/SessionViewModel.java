package org.pullproof.ui.shell;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ChangeListener;
import org.pullproof.advice.Appraisal;
import org.pullproof.advice.Stage;
import org.pullproof.app.BackgroundRunner;
import org.pullproof.app.OpenSession;
import org.pullproof.files.NotWrittenException;
import org.pullproof.session.History;
import org.pullproof.session.Session;
import org.pullproof.units.Figures;
import org.pullproof.units.UnitSystem;

/**
 * The session that is open, what it amounts to, and the sheet being looked at. Sheets show {@link #appraisalProperty()} and
 * change the session by {@link #act}. Acts are done one after another, each on the outcome of the one before; an appraisal
 * that comes after a newer question was asked is dropped.
 */
public final class SessionViewModel {
    private static final Logger LOG = System.getLogger(SessionViewModel.class.getName());
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    /**
     * @param isOnlyHere whether no form holds any more what was typed for it
     * @param isAgain whether it was tried before
     */
    private record Asked(
            Act act, Consumer<String> refused, Consumer<OpenSession> done, boolean isOnlyHere, boolean isAgain) {
        Asked again() {
            return new Asked(act, refused, done, isOnlyHere, true);
        }
    }

    private final SessionServices services;
    private final BackgroundRunner runner;
    private final Clock clock;
    private final Look look;

    private final ReadOnlyObjectWrapper<OpenSession> open;
    private final ReadOnlyObjectWrapper<Appraisal> appraisal;
    private final ObjectProperty<Stage> stage = new SimpleObjectProperty<>(Stage.CAR);
    private final ReadOnlyStringWrapper undoName = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper redoName = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper saved = new ReadOnlyStringWrapper("");

    private final ChangeListener<UnitSystem> unitsChanged = (of, before, after) -> appraise();
    private final List<Runnable> closing = new ArrayList<>();
    private final Deque<Asked> waiting = new ArrayDeque<>();
    private final List<Asked> notWritten = new ArrayList<>();
    private final ReadOnlyIntegerWrapper notWrittenCount = new ReadOnlyIntegerWrapper();
    private boolean acting;
    private int warned;
    private String lastSaved = "";
    private long question;

    /**
     * @param first the session as opened
     * @param amounts its appraisal, made in the units of {@code look}
     */
    public SessionViewModel(
            OpenSession first,
            Appraisal amounts,
            SessionServices services,
            BackgroundRunner runner,
            Look look,
            Clock clock) {
        this.services = services;
        this.runner = runner;
        this.look = look;
        this.clock = clock;
        this.open = new ReadOnlyObjectWrapper<>(first);
        this.appraisal = new ReadOnlyObjectWrapper<>(amounts);
        lastSaved("Opened ");
        nameSteps(first.history());
        look.unitsProperty().addListener(unitsChanged);
    }

    /** Lets go of what lives longer than this session. */
    public void close() {
        look.unitsProperty().removeListener(unitsChanged);
        closing.forEach(Runnable::run);
    }

    /** What is let go of with this session. */
    public void onClose(Runnable act) {
        closing.add(act);
    }

    /**
     * Does something to the session; if it cannot be done, {@link #problemProperty()} says why. What could not be written stays here,
     * for the form it came from lets go of it, until it is {@linkplain #tryAgain() tried again}.
     */
    public void act(Act act) {
        ask(new Asked(act, problem::set, after -> {}, true, false));
    }

    /**
     * Does something to the session.
     *
     * @param refused receives the sentence if it cannot be done
     */
    public void act(Act act, Consumer<String> refused) {
        act(act, refused, after -> {});
    }

    /**
     * Does something to the session.
     *
     * @param refused receives the sentence if it cannot be done
     * @param done receives the session after it
     */
    public void act(Act act, Consumer<String> refused, Consumer<OpenSession> done) {
        ask(new Asked(act, refused, done, false, false));
    }

    private void ask(Asked asked) {
        waiting.add(asked);
        startNext();
    }

    /** Does once more, in their order, what could not be written. */
    public void tryAgain() {
        List<Asked> again = List.copyOf(notWritten);
        countNotWritten(notWritten::clear);
        problem.set("");
        again.forEach(asked -> ask(asked.again()));
    }

    /** Gives up what could not be written; the session on the disk is as it was. */
    public void leaveUndone() {
        countNotWritten(notWritten::clear);
        problem.set("");
    }

    /**
     * Whether the session may be left: not while edits are only here, but for who asks a second time.
     */
    public boolean mayLeave() {
        if (notWritten.isEmpty() || warned == notWritten.size()) {
            return true;
        }
        warned = notWritten.size();
        say(notSaved() + " and would be lost. Try again or save a copy; or leave once more to go without.");
        return false;
    }

    private void countNotWritten(Runnable change) {
        change.run();
        saved.set(notWritten.isEmpty() ? lastSaved : notSaved());
        notWrittenCount.set(notWritten.size());
    }

    private void lastSaved(String how) {
        lastSaved = how + now();
        saved.set(lastSaved);
    }

    private String notSaved() {
        return notWritten.size() == 1 ? "1 edit is not saved" : notWritten.size() + " edits are not saved";
    }

    private void startNext() {
        if (acting || waiting.isEmpty()) {
            return;
        }
        acting = true;
        Asked next = waiting.remove();
        OpenSession before = open.get();
        runner.run(() -> next.act().on(before), after -> done(next, before, after), failure -> failed(next, failure));
    }

    private void done(Asked asked, OpenSession before, OpenSession after) {
        acting = false;
        // what was said of the way out stays while what waited is written
        problem.set(asked.isAgain() ? problem.get() : "");
        open.set(after);
        nameSteps(after.history());
        lastSaved("Saved ");
        boolean forward =
                after.history().past().size() > before.history().past().size();
        said.set(forward ? undoName.get() : "");
        appraise();
        asked.done().accept(after);
        takeUpAgain();
        startNext();
    }

    /** The disk takes edits again, so what could not be written goes before what is asked next. */
    private void takeUpAgain() {
        for (int last = notWritten.size() - 1; last >= 0; last--) {
            waiting.addFirst(notWritten.get(last).again());
        }
        countNotWritten(notWritten::clear);
    }

    private void failed(Asked asked, Exception failure) {
        acting = false;
        if (asked.isOnlyHere() && failure instanceof NotWrittenException) {
            countNotWritten(() -> notWritten.add(asked));
        }
        asked.refused().accept(sentence(failure));
        startNext();
    }

    /** What a person reads of a failure. */
    static String sentence(Exception failure) {
        String message = failure.getMessage();
        if (failure instanceof RuntimeException && !(failure instanceof IllegalArgumentException)) {
            LOG.log(Level.ERROR, "An act failed", failure);
            return "This could not be done; the session is as it was. (" + failure + ")";
        }
        return message == null ? failure.toString() : message;
    }

    private void appraise() {
        long asked = ++question;
        OpenSession of = open.get();
        Figures figures = look.figures();
        runner.run(
                () -> services.appraiser().appraise(of, figures),
                answer -> {
                    if (asked == question) {
                        appraisal.set(answer);
                    }
                },
                failure -> problem.set(sentence(failure)));
    }

    private void nameSteps(History history) {
        undoName.set(history.undoName().orElse(""));
        redoName.set(history.redoName().orElse(""));
    }

    private String now() {
        return LocalTime.now(clock).format(CLOCK);
    }

    /** The day it is where the program runs. */
    LocalDate today() {
        return LocalDate.now(clock);
    }

    /** Takes the last edit back, if there is one. */
    public void undo() {
        if (!undoName.get().isEmpty()) {
            act(services.undo());
        }
    }

    /** Does the last undone edit again, if there is one. */
    public void redo() {
        if (!redoName.get().isEmpty()) {
            act(services.redo());
        }
    }

    /** Opens the sheet the next step is done on. */
    public void goToNextStep() {
        stage.set(appraisal.get().next().stage());
    }

    /** How many edits could not be written and are only here. */
    public ReadOnlyIntegerProperty notWrittenProperty() {
        return notWrittenCount.getReadOnlyProperty();
    }

    /** What is said once was read. */
    public void forgetSaid() {
        said.set("");
        problem.set("");
    }

    /** Says a sentence at the foot. */
    public void say(String problemSentence) {
        problem.set(problemSentence);
    }

    /** What the session amounts to, with the session it was made from: all that a sheet shows. */
    public ReadOnlyObjectProperty<Appraisal> appraisalProperty() {
        return appraisal.getReadOnlyProperty();
    }

    public Appraisal appraisal() {
        return appraisal.get();
    }

    /** The document the appraisal was made from. */
    public Session session() {
        return appraisal.get().session();
    }

    /** The session as last written; may be newer than the appraisal. */
    public OpenSession open() {
        return open.get();
    }

    /** The session as last written. */
    public ReadOnlyObjectProperty<OpenSession> openProperty() {
        return open.getReadOnlyProperty();
    }

    /** Whether something is still being done to the session. */
    public boolean isActing() {
        return acting || !waiting.isEmpty();
    }

    public Look look() {
        return look;
    }

    public ObjectProperty<Stage> stageProperty() {
        return stage;
    }

    /** The edit that undo takes back, or empty. */
    public ReadOnlyStringProperty undoNameProperty() {
        return undoName.getReadOnlyProperty();
    }

    /** The edit that redo does again, or empty. */
    public ReadOnlyStringProperty redoNameProperty() {
        return redoName.getReadOnlyProperty();
    }

    /** A sentence on what could not be done, or empty. */
    public ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /** The name of the edit just made, to be said once, or empty. */
    public ReadOnlyStringProperty saidProperty() {
        return said.getReadOnlyProperty();
    }

    /** "Saved 14:02", or "2 edits are not saved". */
    public ReadOnlyStringProperty savedProperty() {
        return saved.getReadOnlyProperty();
    }
}
