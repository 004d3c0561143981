package org.pullproof.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.pullproof.ui.WindowRobot.until;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.HeadlessFx;
import org.pullproof.advice.Cautions;
import org.pullproof.files.TradeFiles;
import org.pullproof.testing.Tools;
import org.pullproof.ui.parts.Fonts;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/**
 * Everything in the window can be read. No words are too close in colour to their ground, and nothing is cut: no words end in dots, nothing lies where nobody can scroll. Sizes are what a screen of 1280 by
 * 800 leaves at 100, 125, 150 and 200 %; the wide window is drawn by {@link SheetPicturesTest}.
 */
@ExtendWith({HeadlessFx.class, ApplicationExtension.class})
class NothingCutTest {
    private static final List<KeyCode> SHEETS =
            List.of(KeyCode.DIGIT1, KeyCode.DIGIT2, KeyCode.DIGIT3, KeyCode.DIGIT4, KeyCode.DIGIT5, KeyCode.DIGIT6);
    private Stage stage;
    private final ColoursInUse colours = new ColoursInUse();
    private final WindowRobot person = new WindowRobot(new FxRobot());

    @Start
    void start(Stage shown) throws Exception {
        stage = shown;
        Path config = Files.createTempDirectory("pullproof-cut");
        Fonts.load();
        TradeFiles trade = new TradeFiles();
        Cautions cautions = new Cautions(trade.cautions(), trade.lastCaution());
        new ProgramWindow(Tools.with(config), cautions, stage, List::of, Clock.system(ZoneOffset.UTC))
                .show(Optional.empty());
    }

    @AfterEach
    void close(FxRobot robot) {
        robot.interact(stage::hide);
    }

    private void size(FxRobot robot, double width, double height) {
        robot.interact(() -> {
            stage.setWidth(width);
            stage.setHeight(height);
        });
    }

    private Parent root() {
        return stage.getScene().getRoot();
    }

    private void look(String where, Map<String, List<String>> found) {
        Snapshots.onFx(() -> {
            // under the veil of search the window is only to be guessed at
            Node over = root().lookup(".search-box");
            colours.look(over == null ? root() : over, where);
            return true;
        });
        List<String> wrong = new ArrayList<>(Snapshots.onFx(() -> {
            root().applyCss();
            root().layout();
            return Snapshots.cutShort(root());
        }));
        wrong.addAll(Snapshots.outside(root()));
        wrong.addAll(Snapshots.tooLong(root()));
        if (!wrong.isEmpty()) {
            found.put(where, wrong);
        }
    }

    private void key(String where, KeyCode key, Map<String, List<String>> found) {
        person.key(key);
        look(where, found);
    }

    private void control(String where, KeyCode key, Map<String, List<String>> found) {
        person.control(key);
        look(where, found);
    }

    @ParameterizedTest
    @CsvSource({"1280, 800, false", "1280, 800, true", "1024, 640, false", "853, 533, true", "640, 400, false"})
    void onAnySheetOrPage(double width, double height, boolean night, FxRobot robot) throws Exception {
        size(robot, width, height);
        Map<String, List<String>> found = new LinkedHashMap<>();
        look("title sheet", found);
        control("new car", KeyCode.N, found);
        key("title sheet again", KeyCode.ESCAPE, found);
        if (night) {
            person.control(KeyCode.L);
        }
        person.key(KeyCode.ENTER);
        until(() -> stage.getTitle().startsWith("Grey coup"));
        for (KeyCode sheet : SHEETS) {
            control("sheet of " + sheet, sheet, found);
        }
        until(() -> person.answer().startsWith("Stop spending"));
        look("Worth it, weighed", found);
        control("values", KeyCode.J, found);
        key("values closed", KeyCode.ESCAPE, found);
        control("kept", KeyCode.H, found);
        key("kept closed", KeyCode.ESCAPE, found);
        control("search", KeyCode.F, found);
        person.type("plug");
        look("search for plug", found);
        person.key(KeyCode.ESCAPE);
        person.control(KeyCode.DIGIT2);
        for (KeyCode group : List.of(KeyCode.B, KeyCode.C, KeyCode.L, KeyCode.F, KeyCode.W, KeyCode.A)) {
            key("Health, " + group, group, found);
        }
        key("guide", KeyCode.F1, found);
        person.key(KeyCode.ESCAPE);
        key("TDC guide", KeyCode.F3, found);
        person.key(KeyCode.ESCAPE);
        key("fender mode", KeyCode.F2, found);
        person.key(KeyCode.ESCAPE);
        person.control(KeyCode.DIGIT4);
        key("gate and run list", KeyCode.G, found);
        key("day", KeyCode.ESCAPE, found);
        assertThat(found).isEmpty();
        Files.createDirectories(Path.of("target", "pictures"));
        Files.writeString(
                Path.of("target", "pictures", "contrast-" + (night ? "night" : "paper") + ".txt"), colours.table());
        assertThat(colours.size()).isGreaterThan(15);
        assertThat(colours.tooClose()).isEmpty();
    }

    /** Or the test above would pass on anything. */
    @Test
    void whatIsCutIsFound(FxRobot robot) {
        robot.interact(() -> {
            javafx.scene.control.Label words = new javafx.scene.control.Label("words that need more room than this");
            words.setMaxWidth(60);
            javafx.scene.control.Button far = new javafx.scene.control.Button("far");
            far.setTranslateX(5000);
            javafx.scene.control.TextField entry = new javafx.scene.control.TextField("a long story of a car");
            entry.setMaxWidth(50);
            stage.getScene().setRoot(new javafx.scene.layout.VBox(words, far, entry));
        });
        assertThat(Snapshots.onFx(() -> Snapshots.cutShort(root()))).hasSize(1);
        assertThat(Snapshots.outside(root())).hasSize(1);
        robot.interact(() -> root().requestFocus());
        assertThat(Snapshots.tooLong(root())).hasSize(1);
    }
}
