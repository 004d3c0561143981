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
        model = new TuneUpViewModel(session, desk.tools(), SheetFixture.CLOCK);
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
        assertThat(step("b").words()).isEqualTo("waits for a");
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

    @Test
    void aPlanHoldsOnlyWhatIsWantedAndWhatThatNeeds() {
        model.want("plugs and coils only");

        assertThat(model.plan()).contains("plugs and coils only");
        assertThat(model.findings().steps())
                .extracting(state -> state.step().id())
                .containsExactly("a", "b", "c", "d", "e", "g", "h", "m", "n");
    }

    @Test
    void theWholeTuneUpIsChosenAgain() {
        model.want("plugs and coils only");
        model.want(TuneUpViewModel.ALL);

        assertThat(model.plan()).contains(TuneUpViewModel.ALL);
        assertThat(model.findings().steps()).hasSize(14);
    }

    @Test
    void aPartLeftOffWithAReasonStandsWithIt() {
        model.toggle(step("a"));
        model.toggle(step("b"));
        model.leaveOff("battery lead", "it has a switch", refused -> {});

        assertThat(model.findings().leftOff()).containsExactly("battery lead: it has a switch");
        assertThat(model.findings().startBlockedBy())
                .extracting(block -> block.what())
                .containsExactly("start gate: not ticked");
    }

    @Test
    void theCapIsReadWithSpacesOrCommas() {
        assertThat(TuneUpViewModel.readCap("1, 3 4-2")).containsExactly(1, 3, 4, 2);
    }

    @Test
    void aCapThatLacksACylinderIsRefused() {
        List<String> refused = new ArrayList<>();
        model.recordCap(List.of(1, 3, 4), refused::add);

        assertThat(refused).singleElement().asString().contains("each of the cylinders 1 to 4 once");
    }
}
