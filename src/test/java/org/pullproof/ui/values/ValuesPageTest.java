package org.pullproof.ui.values;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import javafx.scene.Scene;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.pullproof.HeadlessFx;
import org.pullproof.files.TradeConstants;
import org.pullproof.session.Edit;
import org.pullproof.session.Judgement;
import org.pullproof.ui.SheetFixture;
import org.pullproof.ui.Snapshots;
import org.pullproof.ui.UiFixture;
import org.pullproof.ui.shell.Act;
import org.pullproof.ui.shell.SessionViewModel;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@ExtendWith({HeadlessFx.class, ApplicationExtension.class})
class ValuesPageTest {
    private final SessionViewModel session = SheetFixture.model(UiFixture.open(), UiFixture::appraise);
    private ValuesPage page;
    private boolean left;

    /** Edits in memory, unchecked. */
    private static final class InMemory implements ValueActs {
        @Override
        public Act edit(Map<String, Optional<Double>> values) {
            return open -> UiFixture.after(
                    open,
                    new Edit("Judge", now -> now.withJudgement(now.judgement().with(values))));
        }

        @Override
        public Act reset() {
            return open -> UiFixture.after(open, new Edit("Own", now -> now.withJudgement(Judgement.own())));
        }
    }

    @Start
    void open(Stage stage) {
        page = new ValuesPage(
                new ValuesViewModel(session, new InMemory(), new TradeConstants().all()), () -> left = true);
        Scene scene = new Scene(page, 1280, 800);
        scene.getStylesheets().add("/org/pullproof/ui/pullproof.css");
        stage.setScene(scene);
        stage.show();
    }

    private void find(FxRobot robot, String words) {
        robot.interact(page::requestFocus);
        robot.write(words);
        robot.interact(() -> page.lookup("#values").requestFocus());
    }

    @Test
    void aValueIsFoundByItsWordsAndEditedByKeys(FxRobot robot) {
        find(robot, "faulty expected");

        robot.type(KeyCode.ENTER);
        robot.press(KeyCode.CONTROL).type(KeyCode.A).release(KeyCode.CONTROL);
        robot.write("0.3").type(KeyCode.ENTER);

        assertThat(session.session().judgement().edited())
                .containsExactly(Map.entry("faults.priors.faultyCylinders", 0.3));
        Snapshots.write(page.getScene(), "values");
    }

    @Test
    void severalValuesAreCountedWithTheirUnitIfTheyHaveOne(FxRobot robot) {
        find(robot, "weight of each state");
        assertThat(robot.lookup("4 values").tryQuery()).isPresent();
        robot.interact(() -> ((TextField) page.lookup("#search-values")).setText("part of each fault"));
        assertThat(robot.lookup("12 values, % of faulty cylinders").tryQuery()).isPresent();
    }

    @Test
    void aValueTooFarOffIsRefusedAtItsField(FxRobot robot) {
        find(robot, "faulty expected");

        robot.type(KeyCode.ENTER);
        robot.press(KeyCode.CONTROL).type(KeyCode.A).release(KeyCode.CONTROL);
        robot.write("45").type(KeyCode.ENTER);

        assertThat(session.session().judgement().isOwn()).isTrue();
        assertThat(robot.lookup(".refusal").queryAll())
                .anyMatch(node -> String.valueOf(node).contains("From 0.045 to 4.5."));
    }

    @Test
    void theWayBackBringsTheProgramsOwnValue(FxRobot robot) {
        robot.interact(() -> session.act(new InMemory().edit(Map.of("health.weakDrop", Optional.of(12.0)))));
        find(robot, "health.weakdrop");

        robot.clickOn("#value-back");

        assertThat(session.session().judgement().isOwn()).isTrue();
    }

    @Test
    void aPublishedFigureIsShownAndNotEdited(FxRobot robot) {
        find(robot, "published");

        ListView<?> found = robot.lookup("#values").queryListView();
        assertThat(found.getItems()).hasSize(1);
        assertThat(robot.lookup("#keep-value").tryQuery()).isEmpty();
    }

    @Test
    void escapeLeaves(FxRobot robot) {
        robot.interact(page::requestFocus);
        robot.type(KeyCode.ESCAPE);

        assertThat(left).isTrue();
    }
}
