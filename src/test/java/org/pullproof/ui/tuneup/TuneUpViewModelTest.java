package org.pullproof.ui.tuneup;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pullproof.tuneup.PlugRecord;
import org.pullproof.tuneup.TuneUpFindings.State;
import org.pullproof.tuneup.TuneUpFindings.StepState;
import org.pullproof.ui.DeskFixture;
import org.pullproof.ui.SheetFixture;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;

class TuneUpViewModelTest {
    @TempDir
    private Path folder;

    private SessionViewModel session;
    private TuneUpViewModel model;

    @BeforeEach
    void begin() throws IOException {
        DeskFixture desk = new DeskFixture(folder);
        session = desk.model();
        model = new TuneUpViewModel(
                session, desk.tools().tickStep(), desk.tools().recordPlug(), SheetFixture.CLOCK);
    }

    private StepState step(String id) {
        return model.findings().steps().stream()
                .filter(state -> state.step().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static PlugRecord plug(int cylinder, String gap) {
        return new PlugRecord(cylinder, Optional.of(Quantity.of(gap, Unit.IN)), Optional.empty(), Optional.empty());
    }

    @Test
    void aTickedStepIsDoneAndATickTakenAwayIsNot() {
        model.toggle(step("a"));
        assertThat(step("a").state()).isEqualTo(State.DONE);

        model.toggle(step("a"));
        assertThat(step("a").state()).isNotEqualTo(State.DONE);
    }

    @Test
    void aStepThatWaitsSaysForWhat() {
        assertThat(TuneUpViewModel.word(step("b"))).isEqualTo("waits for a");
    }

    @Test
    void aStepThatWaitsIsNotTicked() {
        model.toggle(step("d"));

        assertThat(step("d").state()).isNotEqualTo(State.DONE);
        assertThat(session.problemProperty().get()).isNotEmpty();
    }

    @Test
    void whatAStepTakesOffStandsOnTheShelfUntilItIsPutBack() {
        model.toggle(step("a"));
        model.toggle(step("b"));
        assertThat(model.findings().offCar()).singleElement().asString().contains("battery lead");

        model.putBack("battery lead");
        assertThat(model.findings().offCar()).isEmpty();
    }

    @Test
    void everyCylinderHasAPlugRow() {
        assertThat(model.plugs()).extracting(row -> row.plug().cylinder()).containsExactly(1, 2, 3, 4);
    }

    @Test
    void aPlugIsRecordedAtItsCylinder() {
        model.record(plug(3, "0.041"), refused -> {});

        assertThat(model.plugs().get(2).plug()).isEqualTo(plug(3, "0.041"));
    }

    @Test
    void aPlugOfACylinderTheEngineLacksIsRefused() {
        List<String> refused = new ArrayList<>();
        model.record(plug(9, "0.041"), refused::add);

        assertThat(refused).singleElement().asString().contains("9 of 4");
    }
}
