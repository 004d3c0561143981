package org.pullproof.ui.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.pullproof.advice.Stage;
import org.pullproof.app.BackgroundRunner;
import org.pullproof.app.ImmediateRunner;
import org.pullproof.app.OpenSession;
import org.pullproof.car.Fact;
import org.pullproof.files.NotWrittenException;
import org.pullproof.session.Edit;
import org.pullproof.session.History;
import org.pullproof.ui.UiFixture;
import org.pullproof.units.UnitSystem;

class SessionViewModelTest {
    private static final Clock AT_14_02 = Clock.fixed(Instant.parse("2024-05-04T14:02:00Z"), ZoneOffset.UTC);
    private static final SessionServices SERVICES = new SessionServices(
            open -> with(open, open.history().undo()),
            open -> with(open, open.history().redo()),
            UiFixture::appraise);

    private final Look look = new Look(UnitSystem.US, false);
    private final SessionViewModel model = model(new ImmediateRunner());

    private SessionViewModel model(BackgroundRunner runner) {
        OpenSession open = UiFixture.open();
        return new SessionViewModel(open, UiFixture.appraise(open, look.figures()), SERVICES, runner, look, AT_14_02);
    }

    private static OpenSession with(OpenSession open, History history) {
        return new OpenSession(open.folder(), history, open.traces(), open.problems());
    }

    private static Act tell(Fact fact, String text) {
        Edit edit = new Edit(
                "Set " + fact.words(), session -> session.withCar(session.car().with(fact, text)));
        return open -> UiFixture.after(open, edit);
    }

    @Test
    void anActChangesWhatSheetsShow() {
        model.act(tell(Fact.FUEL, "91 octane"));
        assertThat(model.session().car().told(Fact.FUEL)).contains("91 octane");
    }

    @Test
    void anActIsSaidOnceByTheNameOfItsEdit() {
        model.act(tell(Fact.FUEL, "91 octane"));
        assertThat(model.saidProperty().get()).isEqualTo("Set Fuel");
    }

    @Test
    void theTimeOfTheLastSavingIsShown() {
        model.act(tell(Fact.FUEL, "91 octane"));
        assertThat(model.savedProperty().get()).isEqualTo("Saved 14:02");
    }

    @Test
    void undoTakesAnActBackAndRedoDoesItAgain() {
        model.act(tell(Fact.FUEL, "91 octane"));
        model.undo();
        assertThat(model.session().car().told(Fact.FUEL)).isEmpty();
        model.redo();
        assertThat(model.session().car().told(Fact.FUEL)).contains("91 octane");
    }

    @Test
    void undoWithNothingToUndoDoesNothing() {
        model.undo();
        assertThat(model.problemProperty().get()).isEmpty();
    }

    @Test
    void anActThatFailsLeavesTheSessionAndSaysWhy() {
        model.act(open -> {
            throw new IllegalArgumentException("cylinder 9 of 8: this engine has cylinders 1 to 8");
        });
        assertThat(model.problemProperty().get()).isEqualTo("cylinder 9 of 8: this engine has cylinders 1 to 8");
        assertThat(model.open().history().past()).isEmpty();
    }

    @Test
    void aRefusalGoesToWhoeverAskedForIt() {
        AtomicReference<String> sentence = new AtomicReference<>("");
        model.act(
                open -> {
                    throw new IllegalArgumentException("refused here");
                },
                sentence::set);
        assertThat(sentence.get()).isEqualTo("refused here");
        assertThat(model.problemProperty().get()).isEmpty();
    }

    /** A disk that takes nothing while it is full. */
    private boolean full;

    private Act written(Fact fact, String text) {
        return open -> {
            if (full) {
                throw new NotWrittenException("session.json", "no room; make room, or save a copy elsewhere.");
            }
            return tell(fact, text).on(open);
        };
    }

    @Test
    void whatCouldNotBeWrittenIsDoneInItsOrderWhenTriedAgain() {
        full = true;
        model.act(written(Fact.FUEL, "91 octane"));
        model.act(written(Fact.FUEL, "95 octane"));
        assertThat(model.notWrittenProperty().get()).isEqualTo(2);
        assertThat(model.savedProperty().get()).isEqualTo("2 edits are not saved");
        assertThat(model.problemProperty().get()).contains("make room");

        full = false;
        model.tryAgain();

        assertThat(model.notWrittenProperty().get()).isZero();
        assertThat(model.session().car().told(Fact.FUEL)).contains("95 octane");
        assertThat(model.open().history().past()).hasSize(2);
        assertThat(model.savedProperty().get()).isEqualTo("Saved 14:02");
        assertThat(model.problemProperty().get()).isEmpty();
    }

    @Test
    void whatCouldNotBeWrittenIsTakenUpWithTheNextEditThatCan() {
        full = true;
        model.act(written(Fact.FUEL, "91 octane"));
        full = false;
        model.act(written(Fact.GEAR, "3rd"));
        assertThat(model.session().car().told(Fact.FUEL)).contains("91 octane");
        assertThat(model.session().car().told(Fact.GEAR)).contains("3rd");
        assertThat(model.notWrittenProperty().get()).isZero();
    }

    @Test
    void aDiskThatStaysFullKeepsWhatWaits() {
        full = true;
        model.act(written(Fact.FUEL, "91 octane"));
        model.tryAgain();
        assertThat(model.notWrittenProperty().get()).isEqualTo(1);
        assertThat(model.problemProperty().get()).contains("make room");
    }

    @Test
    void whatAFormStillHoldsDoesNotWaitHereToo() {
        full = true;
        model.act(written(Fact.FUEL, "91 octane"), sentence -> {});
        assertThat(model.notWrittenProperty().get()).isZero();
    }

    @Test
    void whatCouldNotBeWrittenCanBeLeftUndone() {
        full = true;
        model.act(written(Fact.FUEL, "91 octane"));
        model.leaveUndone();
        full = false;
        model.act(written(Fact.GEAR, "3rd"));
        assertThat(model.session().car().told(Fact.FUEL)).isEmpty();
        assertThat(model.savedProperty().get()).isEqualTo("Saved 14:02");
    }

    @Test
    void theSessionIsLeftWithEditsOnlyHereAtTheSecondAskingAlone() {
        assertThat(model.mayLeave()).isTrue();
        full = true;
        model.act(written(Fact.FUEL, "91 octane"));
        assertThat(model.mayLeave()).isFalse();
        assertThat(model.problemProperty().get()).startsWith("1 edit is not saved and would be lost.");
        assertThat(model.mayLeave()).isTrue();
    }

    @Test
    void twoActsAskedQuicklyAreBothDone() {
        LaterRunner later = new LaterRunner();
        SessionViewModel slow = model(later);
        slow.act(tell(Fact.FUEL, "91 octane"));
        slow.act(tell(Fact.GEAR, "3rd"));
        later.finishAll();
        assertThat(slow.session().car().told(Fact.FUEL)).contains("91 octane");
        assertThat(slow.session().car().told(Fact.GEAR)).contains("3rd");
    }

    @Test
    void anAppraisalInUnitsNoLongerWantedIsDropped() {
        LaterRunner later = new LaterRunner();
        SessionViewModel slow = model(later);
        look.otherUnits();
        look.otherUnits();
        later.finishLast();
        later.finishAll();
        assertThat(slow.appraisal().figures().system()).isEqualTo(UnitSystem.US);
    }

    @Test
    void otherUnitsAskForANewAppraisal() {
        look.otherUnits();
        assertThat(model.appraisal().figures().system()).isEqualTo(UnitSystem.METRIC);
    }

    @Test
    void aClosedSessionNoLongerFollowsTheUnits() {
        model.close();
        look.otherUnits();
        assertThat(model.appraisal().figures().system()).isEqualTo(UnitSystem.US);
    }

    @Test
    void theNextStepOpensItsSheet() {
        model.goToNextStep();
        assertThat(model.stageProperty().get()).isEqualTo(Stage.HEALTH);
    }

    /** Keeps work until a test lets it finish, so that tests choose the order of answers. */
    private static final class LaterRunner implements BackgroundRunner {
        private final Deque<Runnable> work = new ArrayDeque<>();
        private final ImmediateRunner now = new ImmediateRunner();

        @Override
        public <T> void run(Callable<T> asked, Consumer<T> onSuccess, Consumer<Exception> onFailure) {
            work.add(() -> now.run(asked, onSuccess, onFailure));
        }

        void finishLast() {
            work.removeLast().run();
        }

        void finishAll() {
            while (!work.isEmpty()) {
                work.removeFirst().run();
            }
        }
    }
}
