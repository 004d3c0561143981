package org.pullproof.ui.dynoday;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.pullproof.HeadlessFx;
import org.pullproof.drawing.Drawing;
import org.pullproof.drawing.Shape;
import org.pullproof.drawing.Speeds;
import org.pullproof.dyno.Role;
import org.pullproof.report.Palette;
import org.pullproof.report.SvgPainter;
import org.pullproof.testing.Xml;
import org.pullproof.ui.DynoFixture;
import org.pullproof.ui.SheetFixture;
import org.pullproof.ui.Snapshots;
import org.pullproof.ui.parts.PngPicture;
import org.pullproof.ui.shell.SessionViewModel;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The curves on eleven invented pulls from 2,000 to 5,200 rpm. */
@ExtendWith({HeadlessFx.class, ApplicationExtension.class})
class CurvesPanelTest {
    private final List<Drawing> saved = new ArrayList<>();
    private ChartViewModel model;
    private CurvesPanel panel;

    @Start
    void open(Stage stage) {
        SessionViewModel session = SheetFixture.model(DynoFixture.open(), DynoFixture::appraise);
        model = new ChartViewModel(DynoPictures.model(session, new DynoPictures.Acts()));
        panel = new CurvesPanel(model, saved::add);
        VBox page = new VBox(panel);
        Scene scene = new Scene(page, 700, 560);
        scene.addEventHandler(
                javafx.scene.input.KeyEvent.KEY_PRESSED, key -> panel.view().key(key));
        scene.getStylesheets().add("/org/pullproof/ui/pullproof.css");
        stage.setScene(scene);
        stage.show();
    }

    @Test
    void theArrowsMoveTheCrosshairAndItsReadingIsTold(FxRobot robot) {
        robot.interact(() -> panel.view().requestFocus());
        robot.type(KeyCode.RIGHT);
        int first = model.crosshairProperty().get().orElseThrow();
        robot.press(KeyCode.SHIFT).type(KeyCode.LEFT).release(KeyCode.SHIFT);

        assertThat(model.crosshairProperty().get()).contains(first - 200);
        assertThat(panel.view().getAccessibleText()).contains("rpm; base: hp").contains("from base");
        Snapshots.write(panel.getScene(), "dyno-crosshair");
        robot.type(KeyCode.ESCAPE);
        assertThat(model.crosshairProperty().get()).isEmpty();
    }

    @Test
    void theMousePointsAndADragZooms(FxRobot robot) {
        Bounds place = robot.bounds(panel.view()).query();
        double middle = place.getMinY() + place.getHeight() / 2;
        robot.moveTo(place.getMinX() + 200, middle);
        assertThat(model.crosshairProperty().get()).isPresent();

        robot.drag(place.getMinX() + 150, middle, javafx.scene.input.MouseButton.PRIMARY)
                .dropTo(place.getMinX() + 350, middle);

        Speeds seen = model.panelsProperty().get().speeds();
        assertThat(seen.width()).isBetween(700, 1700);
        assertThat(robot.lookup("#all-speeds").tryQuery()).isPresent();
    }

    @Test
    void plusAndMinusZoomAndZeroShowsAll(FxRobot robot) {
        robot.interact(() -> panel.view().requestFocus());
        robot.type(KeyCode.ADD);
        assertThat(model.panelsProperty().get().speeds().width()).isEqualTo(1600);
        robot.type(KeyCode.SUBTRACT).type(KeyCode.ADD).type(KeyCode.NUMPAD0);
        assertThat(model.isZoomed()).isFalse();
    }

    @Test
    void onlyWhatWasLoggedIsOffered() {
        assertThat(model.logged()).doesNotContain(Role.LAMBDA);
        assertThat(panel.lookup("#panel-lambda")).isNull();
    }

    @Test
    void thePictureSavedStandsAlone(FxRobot robot, @TempDir Path folder) throws Exception {
        robot.clickOn("#save-picture");

        assertThat(words(saved.get(0))).anyMatch(line -> line.contains("power at the wheels"));
        assertThat(words(saved.get(0)))
                .anyMatch(line -> line.contains("inHg station, 81 °F, 55 %"))
                .anyMatch(line -> line.contains("SAE J1349") && line.contains("14 June 2026"));
        String svg = new SvgPainter(Palette.paper()).file(saved.get(0));
        assertThat(Xml.parse(svg).getElementsByTagName("path").getLength()).isGreaterThan(10);
        byte[] dots = Snapshots.onFx(() -> PngPicture.of(saved.get(0))).bytes();
        Path file = Files.write(folder.resolve("curves.png"), dots);
        assertThat(Optional.ofNullable(ImageIO.read(file.toFile()))
                        .orElseThrow()
                        .getWidth())
                .isEqualTo(2000);
    }

    private static List<String> words(Drawing drawing) {
        return drawing.shapes().stream()
                .filter(Shape.Text.class::isInstance)
                .map(shape -> ((Shape.Text) shape).words().replace('\u00a0', ' '))
                .toList();
    }
}
