package org.pullproof.ui.dynoday;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.pullproof.HeadlessFx;
import org.pullproof.car.Fact;
import org.pullproof.session.Edit;
import org.pullproof.ui.DynoFixture;
import org.pullproof.ui.SheetFixture;
import org.pullproof.ui.Snapshots;
import org.pullproof.ui.UiFixture;
import org.pullproof.ui.shell.SessionViewModel;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@ExtendWith({HeadlessFx.class, ApplicationExtension.class})
class DynoDaySheetTest {
    private final DynoPictures.Acts acts = new DynoPictures.Acts();
    private VBox page;
    private DynoDaySheet sheet;
    private DynoDayViewModel model;

    @Start
    void open(Stage stage) {
        SessionViewModel session = SheetFixture.model(
                UiFixture.after(
                        UiFixture.open(),
                        new Edit("Set", now -> now.withCar(now.car().with(Fact.ELEVATION, "5250ft")))),
                DynoFixture::appraise);
        model = DynoPictures.model(session, acts);
        sheet = new DynoDaySheet(
                model,
                DynoPictures.day(session),
                DynoPictures.watch(model),
                () -> List.of(Path.of("chosen.csv")),
                picture -> {},
                List.of("Nobody behind the rollers."));
        page = new VBox(sheet.node());
        Scene scene = new Scene(page, 828, 600);
        scene.getStylesheets().add("/org/pullproof/ui/pullproof.css");
        stage.setScene(scene);
        stage.show();
    }

    @Test
    void filesDroppedOnTheSheetAreTakenInInOrderOfTheirNames(FxRobot robot) {
        DropPanel drop = (DropPanel) page.lookup(".drop-panel");

        robot.interact(() -> drop.drop(List.of(new File("run2.csv"), new File("run1.csv"))));

        assertThat(acts.taken).containsExactly(Path.of("run1.csv"), Path.of("run2.csv"));
    }

    @Test
    void theButtonAsksForFiles(FxRobot robot) {
        robot.clickOn("Choose files");

        assertThat(acts.taken).containsExactly(Path.of("chosen.csv"));
    }

    @Test
    void airIsTypedByKeysAlone(FxRobot robot) {
        robot.interact(() -> page.lookup("#air-pressure").requestFocus());

        robot.write("24.75")
                .type(KeyCode.TAB)
                .write("88")
                .type(KeyCode.TAB)
                .write("22")
                .type(KeyCode.ENTER);

        assertThat(model.air().latest()).isPresent();
    }

    @Test
    void anAltimeterSettingIsTakenAsOneAtTheField(FxRobot robot) {
        robot.interact(() -> page.lookup("#air-pressure").requestFocus());
        robot.write("30.02").type(KeyCode.TAB);

        Snapshots.write(page.getScene(), "dyno-altimeter");
        robot.clickOn("#as-altimeter");

        assertThat(robot.lookup("#air-pressure").queryTextInputControl().getText())
                .isEqualTo("30.02 inHg");
        assertThat(model.air().entry().pressureForm()).isEqualTo(AirEntry.PressureForm.ALTIMETER);
        assertThat(robot.lookup(".refusal").tryQuery()).isEmpty();
    }

    @Test
    void altATakesThePressureAsASettingToo(FxRobot robot) {
        robot.interact(() -> page.lookup("#air-pressure").requestFocus());
        robot.write("30.02").type(KeyCode.TAB);

        robot.interact(() -> sheet.key(alt(KeyCode.A)));

        assertThat(model.air().entry().pressureForm()).isEqualTo(AirEntry.PressureForm.ALTIMETER);
    }

    @Test
    void altHGoesToTheHeightWhereThePressureIsRight(FxRobot robot) {
        robot.interact(() -> page.lookup("#air-pressure").requestFocus());
        robot.write("30.02").type(KeyCode.TAB);

        robot.interact(() -> sheet.key(alt(KeyCode.H)));
        robot.write("100").type(KeyCode.TAB);

        assertThat(robot.lookup(".refusal").tryQuery()).isEmpty();
    }

    @Test
    void aReportIsPastedAndUsedByKeys(FxRobot robot) {
        robot.clickOn("METAR");
        robot.interact(() -> page.lookup("#air-pressure").requestFocus());
        robot.write("XXXX 121151Z 25/10 A3002").type(KeyCode.TAB).write("88").type(KeyCode.ENTER);

        assertThat(model.air().latest())
                .hasValueSatisfying(reading -> assertThat(reading.air().words())
                        .isEqualTo(
                                "METAR, altimeter setting 30.02 inHg at 5250 ft, 88 °F, dew point 10 °C of the METAR"));
    }

    @Test
    void aFigureOfAnotherSheetIsToldAndAnswered(FxRobot robot) {
        robot.interact(() -> page.lookup("#stated-figure").requestFocus());
        robot.write("248hp sae-j607 wheels").type(KeyCode.ENTER);

        assertThat(model.model().session().stated()).isPresent();
    }

    private static KeyEvent alt(KeyCode code) {
        return new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, false, true, false);
    }
}
