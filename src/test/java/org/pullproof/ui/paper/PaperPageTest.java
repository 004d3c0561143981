package org.pullproof.ui.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javafx.scene.Scene;
import javafx.scene.control.CheckBox;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.pullproof.HeadlessFx;
import org.pullproof.report.Paper;
import org.pullproof.report.ReportPart;
import org.pullproof.ui.Snapshots;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@ExtendWith({HeadlessFx.class, ApplicationExtension.class})
class PaperPageTest {
    private final List<String> done = new ArrayList<>();
    private final List<Set<ReportPart>> saved = new ArrayList<>();
    private PaperPage page;
    private boolean left;

    private final PaperActs acts = new PaperActs() {
        @Override
        public void report(Set<ReportPart> parts) {
            saved.add(parts);
        }

        @Override
        public void dayPlan() {
            done.add("day plan");
        }

        @Override
        public void runCard() {
            done.add("run card");
        }

        @Override
        public void liked(Paper paper) {
            done.add(paper.key());
        }
    };

    @Start
    void open(Stage stage) {
        page = new PaperPage(new PaperViewModel(acts, Paper.A4), () -> left = true);
        Scene scene = new Scene(page, 1280, 800);
        scene.getStylesheets().add("/org/pullproof/ui/pullproof.css");
        stage.setScene(scene);
        stage.show();
        page.requestFocus();
    }

    @Test
    void enterSavesEverythingAtFirst(FxRobot robot) throws Exception {
        robot.type(KeyCode.ENTER);
        assertThat(saved).containsExactly(ReportPart.all());
        Snapshots.write(page.getScene(), "paper");
    }

    @Test
    void spaceLeavesAPartOut(FxRobot robot) {
        robot.type(KeyCode.SPACE, KeyCode.ENTER);
        assertThat(saved).hasSize(1);
        assertThat(saved.get(0)).doesNotContain(ReportPart.SUMMARY).hasSize(ReportPart.values().length - 1);
    }

    @Test
    void theHealthSheetForABuyerTicksHealthAlone(FxRobot robot) {
        robot.clickOn("#health-sheet");
        assertThat(robot.lookup("#part-health").queryAs(CheckBox.class).isSelected())
                .isTrue();
        assertThat(robot.lookup("#part-money").queryAs(CheckBox.class).isSelected())
                .isFalse();
        robot.clickOn("#save-report");
        assertThat(saved).containsExactly(Set.of(ReportPart.HEALTH));
    }

    @Test
    void ofNoPartNothingIsSavedAndThePageSaysWhatWouldBeRight(FxRobot robot) {
        robot.clickOn("#health-sheet").clickOn("#part-health").type(KeyCode.ENTER);
        assertThat(saved).isEmpty();
        assertThat(robot.lookup(".answer-line").queryLabeled().getText()).startsWith("Tick at least one part");
    }

    @Test
    void thePaperIsRememberedOnceChosen(FxRobot robot) {
        robot.clickOn("Letter");
        assertThat(done).containsExactly("letter");
    }

    @Test
    void enterOnAnotherButtonPressesThatOne(FxRobot robot) {
        robot.interact(() -> robot.lookup("#save-day-plan").queryButton().requestFocus());
        robot.type(KeyCode.ENTER);
        robot.clickOn("#save-run-card");
        assertThat(done).containsExactly("day plan", "run card");
        assertThat(saved).isEmpty();
    }

    @Test
    void escapeLeaves(FxRobot robot) {
        robot.type(KeyCode.ESCAPE);
        assertThat(left).isTrue();
    }
}
