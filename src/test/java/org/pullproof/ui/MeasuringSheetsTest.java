package org.pullproof.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.pullproof.HeadlessFx;
import org.pullproof.Main;
import org.pullproof.advice.Stage;
import org.pullproof.app.ImmediateRunner;
import org.pullproof.app.OpenSession;
import org.pullproof.app.Toolbox;
import org.pullproof.car.Fact;
import org.pullproof.session.Session;
import org.pullproof.ui.parts.Fonts;
import org.pullproof.ui.shell.Look;
import org.pullproof.ui.shell.MainView;
import org.pullproof.ui.shell.SessionServices;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.ui.shell.Sheet;
import org.pullproof.units.UnitSystem;
import org.pullproof.worth.Spending;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The sheets on a session on the disk, with the program's own services and answers; keys only. */
@ExtendWith({HeadlessFx.class, ApplicationExtension.class})
class MeasuringSheetsTest {
    private final Path folder;
    private final Toolbox tools;
    private final SessionViewModel model;
    private Scene scene;

    MeasuringSheetsTest(@TempDir Path place) throws Exception {
        tools = Main.tools(Path.of("."), place.resolve("config"));
        folder = place.resolve("car");
        OpenSession open =
                tools.desk().create(folder, "Grey coupé", tools.profiles().find("v8-distributor-order-a"));
        Look look = new Look(UnitSystem.US, false);
        SessionServices services = new SessionServices(
                tools.desk()::undo,
                tools.desk()::redo,
                (now, figures) -> tools.appraise().of(now, figures));
        model = new SessionViewModel(
                open,
                tools.appraise().of(open, look.figures()),
                services,
                new ImmediateRunner(),
                look,
                SheetFixture.CLOCK);
    }

    @Start
    void open(javafx.stage.Stage stage) throws IOException {
        Fonts.load();
        Path first = pull("base1.csv", 1.0);
        Path second = pull("base2.csv", 1.004);
        MeasuringSheets sheets = new MeasuringSheets(
                tools,
                SheetFixture.cautions(),
                () -> List.of(first, second),
                (car, test) -> {},
                (car, picture) -> {},
                new ImmediateRunner(),
                SheetFixture.CLOCK);
        model.stageProperty().set(Stage.HEALTH);
        Map<Stage, Sheet> all = Stream.of(Stage.HEALTH, Stage.DYNO_DAY, Stage.CHANGES, Stage.WORTH_IT)
                .collect(Collectors.toMap(Function.identity(), asked -> sheets.of(model, asked, new NoPictures())));
        scene = new Scene(new MainView(model, all::get, UiFixture.shellActs()), 1280, 800);
        scene.addEventHandler(KeyEvent.KEY_PRESSED, key -> hand(all.values(), key));
        scene.getStylesheets().add("/org/pullproof/ui/pullproof.css");
        stage.setScene(scene);
        stage.show();
    }

    /** Hands a key to the open sheet as the window does: letters only while no words are typed. */
    private void hand(Collection<Sheet> sheets, KeyEvent key) {
        boolean typing = key.getTarget() instanceof TextInputControl && !key.isShortcutDown();
        sheets.stream()
                .filter(sheet ->
                        !typing && sheet.stage() == model.stageProperty().get())
                .forEach(sheet -> sheet.key(key));
    }

    /** An invented pull, every 40 rpm from 2,000 to 5,200. */
    private Path pull(String name, double level) throws IOException {
        StringBuilder table = new StringBuilder("rpm,power [kW]\n");
        for (int rpm = 2000; rpm <= 5200; rpm += 40) {
            double kilowatt = level * 150 * (1 - Math.pow((rpm - 4400) / 3600.0, 2));
            table.append(rpm)
                    .append(',')
                    .append(Math.round(kilowatt * 100) / 100.0)
                    .append('\n');
        }
        Path file = Files.writeString(folder.resolveSibling(name), table);
        Instant made = LocalDateTime.of(2026, 6, 14, 14, 5)
                .atZone(ZoneId.systemDefault())
                .toInstant();
        return Files.setLastModifiedTime(file, FileTime.from(made));
    }

    private Session onDisk() throws Exception {
        return tools.desk().open(folder).session();
    }

    private void focus(FxRobot robot, String id) {
        robot.interact(() -> scene.lookup(id).requestFocus());
    }

    @Test
    void compressionIsTypedByKeysAndJudged(FxRobot robot) throws Exception {
        robot.interact(() ->
                robot.lookup("#entry-test").queryComboBox().getSelectionModel().select(1));
        focus(robot, "#entry-value");

        for (String psi : List.of("158", "162", "155", "92")) {
            robot.write(psi).type(KeyCode.ENTER);
        }

        assertThat(onDisk().readings()).hasSize(4);
        assertThat(scene.getRoot().lookupAll(".tile-words"))
                .extracting(node -> ((Label) node).getText())
                .anyMatch(words -> words.contains("low"));
        Snapshots.write(scene, "real-health");
    }

    @Test
    void aDayIsMadeFromAirAndFilesByKeys(FxRobot robot) throws Exception {
        robot.interact(() -> model.stageProperty().set(Stage.DYNO_DAY));
        focus(robot, "#air-pressure");
        robot.write("98.6kPa")
                .type(KeyCode.TAB)
                .write("27C")
                .type(KeyCode.TAB)
                .write("55")
                .type(KeyCode.ENTER);

        robot.press(KeyCode.CONTROL).type(KeyCode.I).release(KeyCode.CONTROL);

        assertThat(onDisk().days()).singleElement().satisfies(day -> {
            assertThat(day.air()).hasSize(1);
            assertThat(day.pulls()).hasSize(2);
        });
        Snapshots.write(scene, "real-dyno");
    }

    @Test
    void xTakesAPullOutWithItsReasonAndUndoCountsItAgain(FxRobot robot) throws Exception {
        robot.interact(() -> model.stageProperty().set(Stage.DYNO_DAY));
        focus(robot, "#air-pressure");
        robot.press(KeyCode.CONTROL).type(KeyCode.I).release(KeyCode.CONTROL);
        focus(robot, "#pulls");
        robot.type(KeyCode.DOWN).type(KeyCode.X);

        robot.write("belt slipped").type(KeyCode.ENTER);

        assertThat(onDisk().days().get(0).pulls())
                .anyMatch(pull -> pull.excluded().equals(Optional.of("belt slipped")));
        robot.interact(model::undo);
        assertThat(onDisk().days().get(0).pulls())
                .noneMatch(pull -> pull.excluded().isPresent());
    }

    @Test
    void theLetterThatOpensTheFormOfTheAirIsNotTypedIntoIt(FxRobot robot) {
        robot.interact(() -> model.stageProperty().set(Stage.DYNO_DAY));
        focus(robot, "#air-pressure");
        robot.press(KeyCode.CONTROL).type(KeyCode.I).release(KeyCode.CONTROL);
        focus(robot, "#pulls");

        robot.type(KeyCode.A).write("98.6kPa");

        assertThat(robot.lookup("#air-pressure").queryTextInputControl().getText())
                .isEqualTo("98.6kPa");
    }

    @Test
    void theOwnersAnswersAndANumberBehindTheAnswerAreTypedByKeysAndUndone(FxRobot robot) throws Exception {
        robot.interact(() -> model.stageProperty().set(Stage.WORTH_IT));
        focus(robot, "#asked-worth-sound");
        robot.write("7800").type(KeyCode.ENTER);
        focus(robot, "#asked-value-per-hp");
        robot.write("45").type(KeyCode.ENTER);
        focus(robot, "#judgement-search");
        robot.write("lash set");
        focus(robot, "#judgement-work-lash-p50");
        robot.type(KeyCode.END).type(KeyCode.BACK_SPACE, 2).write("30").type(KeyCode.ENTER);

        assertThat(onDisk().car().told(Fact.WORTH_SOUND)).contains("7800USD");
        assertThat(onDisk().car().told(Fact.VALUE_PER_HP)).contains("45USD");
        assertThat(onDisk().judgement().of("money.work.lash.p50")).contains(30.0);
        robot.interact(model::undo);
        assertThat(onDisk().judgement().of("money.work.lash.p50")).isEmpty();
    }

    @Test
    void anOptionAndASpendingAreTypedByKeys(FxRobot robot) throws Exception {
        robot.interact(() -> model.stageProperty().set(Stage.WORTH_IT));
        focus(robot, "#option-name");
        robot.write("head").type(KeyCode.TAB, 2).write("900USD").type(KeyCode.ENTER);
        focus(robot, "#spent-what");
        robot.write("plugs").type(KeyCode.TAB).write("36USD").type(KeyCode.ENTER);
        robot.write("oil").type(KeyCode.TAB).write("40").type(KeyCode.ENTER);

        assertThat(onDisk().money().options())
                .singleElement()
                .matches(option -> option.name().equals("head"));
        assertThat(onDisk().money().spent()).extracting(Spending::what).containsExactly("plugs", "oil");
        Snapshots.write(scene, "real-worth");
    }
}
