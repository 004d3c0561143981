package org.pullproof.ui.dynoday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.CheckBox;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.pullproof.HeadlessFx;
import org.pullproof.dyno.DayFact;
import org.pullproof.dyno.DayGate;
import org.pullproof.dyno.DayPlan;
import org.pullproof.dyno.DynoDay;
import org.pullproof.ui.DeskFixture;
import org.pullproof.ui.SheetFixture;
import org.pullproof.ui.Snapshots;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The page before and between pulls, on a session on the disk. */
@ExtendWith({HeadlessFx.class, ApplicationExtension.class})
class DayPageTest {
    private final DeskFixture desk;
    private final DayViewModel model;
    private VBox page = new VBox();
    private DayPage dayPage;

    DayPageTest(@TempDir Path folder) throws Exception {
        desk = new DeskFixture(folder);
        model = new DayViewModel(desk.model(), new DeskDayActs(desk.tools().prepareDay()), SheetFixture.CLOCK);
    }

    @Start
    void open(Stage stage) {
        dayPage = new DayPage(model);
        dayPage.show();
        desk.model().appraisalProperty().addListener((of, before, after) -> dayPage.show());
        page = new VBox(dayPage);
        Scene scene = new Scene(page, 828, 1000);
        scene.getStylesheets().add("/org/pullproof/ui/pullproof.css");
        stage.setScene(scene);
        stage.show();
    }

    @Test
    void aPointIsTickedByTheSpaceBarAndKeepsTheKeyboard(FxRobot robot) {
        robot.interact(() -> page.lookup("#gate-brakes").requestFocus());
        robot.type(KeyCode.SPACE);

        assertThat(today().gate().ticked()).containsKey("brakes");
        CheckBox tick = (CheckBox) page.lookup("#gate-brakes");
        assertThat(tick.isSelected()).isTrue();
        assertThat(tick.isFocused()).isTrue();
        Snapshots.write(page.getScene(), "dyno-gate");
    }

    @Test
    void aReasonIsAskedForAndKept(FxRobot robot) {
        robot.interact(() -> model.pass("codes", "no computer", refused -> {}));

        assertThat(today().gate().passed()).containsEntry("codes", "no computer");
        assertThat(model.gate().require("codes").passed()).isTrue();
    }

    @Test
    void howTheCarStandsIsTypedAndForgotten(FxRobot robot) {
        TextField tyres = (TextField) page.lookup("#day-tyres");
        robot.interact(tyres::requestFocus);
        robot.write("35 psi cold").type(KeyCode.ENTER);
        assertThat(today().facts()).containsEntry(DayFact.TYRES, "35 psi cold");

        robot.interact(tyres::clear);
        robot.type(KeyCode.ENTER);
        assertThat(today().facts()).isEmpty();
    }

    @Test
    void aPlanMakesTheRunList(FxRobot robot) {
        robot.interact(() -> page.lookup("#day-plan").requestFocus());
        robot.write("base, jets, base * 2").type(KeyCode.ENTER);

        assertThat(model.runs())
                .extracting(run -> run.name())
                .containsExactly("base-1", "base-2", "jets-1", "jets-2", "base-3", "base-4");
        assertThat(robot.lookup("jets-2").tryQuery()).isPresent();
    }

    @Test
    void anAbortTakesTheTicksAway(FxRobot robot) {
        robot.interact(() -> model.tick("brakes", true, refused -> {}));
        robot.interact(() -> page.lookup("#day-abort").requestFocus());
        robot.write("belt smell").type(KeyCode.ENTER);

        assertThat(today().gate().ticked()).isEmpty();
        assertThat(today().gate().aborts()).extracting(DayGate.Abort::cause).containsExactly("belt smell");
        assertThat(model.standing()).contains("closed");
    }

    @Test
    void aPlanWithoutItsCountOrWithNonsenseIsAnswered() {
        assertThat(DayViewModel.readPlan("base,jets,base")).isEqualTo(new DayPlan(List.of("base", "jets", "base"), 3));
        assertThatThrownBy(() -> DayViewModel.readPlan("base × many")).hasMessageContaining("such as 3");
        assertThatThrownBy(() -> DayViewModel.readPlan("base × 2 × 2")).hasMessageContaining("One cross");
    }

    private DynoDay today() {
        List<DynoDay> days = desk.model().session().days();
        return days.get(days.size() - 1);
    }
}
