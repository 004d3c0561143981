package org.pullproof.ui.health;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.HeadlessFx;
import org.pullproof.advice.Appraisal;
import org.pullproof.app.OpenSession;
import org.pullproof.health.FaultFindings;
import org.pullproof.health.HealthFindings;
import org.pullproof.health.HealthFindings.CylinderFindings;
import org.pullproof.health.HealthFindings.State;
import org.pullproof.health.Reading;
import org.pullproof.session.Edit;
import org.pullproof.ui.NoPictures;
import org.pullproof.ui.SheetFixture;
import org.pullproof.ui.UiFixture;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.ui.shell.SheetPage;
import org.pullproof.units.Figures;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@ExtendWith({HeadlessFx.class, ApplicationExtension.class})
class HealthSheetTest {
    private final AtomicReference<org.pullproof.health.TestKind> printed = new AtomicReference<>();
    private VBox page;
    private HealthViewModel model;
    private SessionViewModel session;
    private FenderViewModel fender;
    private HealthSheet sheet;

    @Start
    void open(Stage stage) {
        session = SheetFixture.model(UiFixture.open(), HealthSheetTest::appraise);
        model = new HealthViewModel(session, HealthViewModelTest.rules(), new TypedReadings());
        model.entry().testProperty().set(org.pullproof.health.TestKind.COMPRESSION_DRY);
        fender = HealthPictures.fender(session);
        sheet = new HealthSheet(
                model,
                fender,
                HealthPictures.tdcModel(session),
                test -> List.of("Fuel and ignition off."),
                printed::set,
                new NoPictures());
        page = new VBox(sheet.node());
        Scene scene = new Scene(page, 828, 600);
        scene.getStylesheets().add("/org/pullproof/ui/pullproof.css");
        stage.setScene(scene);
        stage.show();
    }

    /** Shows each dry reading on its tile and says level. */
    private static Appraisal appraise(OpenSession open, Figures figures) {
        HealthFindings none = UiFixture.appraise(open, figures).health();
        List<CylinderFindings> cylinders = new ArrayList<>();
        for (Reading reading : open.session().readings()) {
            if (reading instanceof Reading.Compression compression) {
                cylinders.add(level(compression));
            }
        }
        return SheetFixture.withHealth(
                open,
                figures,
                new HealthFindings(
                        none.verdict(),
                        none.answer(),
                        List.of(),
                        List.of(),
                        List.of(),
                        OptionalDouble.empty(),
                        List.of(),
                        cylinders,
                        List.of(),
                        FaultFindings.none()));
    }

    private static CylinderFindings level(Reading.Compression compression) {
        return new CylinderFindings(
                compression.cylinder().orElseThrow(),
                State.LEVEL,
                "level with the others",
                Optional.of(compression.gauge()),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalInt.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Set.of(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                List.of());
    }

    @Test
    void aReadingTypedByKeysStandsOnItsTileAndTheNextCylinderWaits(FxRobot robot) {
        robot.interact(() -> page.lookup("#entry-value").requestFocus());

        robot.write("158").type(KeyCode.ENTER).write("162").type(KeyCode.ENTER);

        assertThat(figures("158")).isEqualTo(1);
        assertThat(figures("162")).isEqualTo(1);
        assertThat(model.entry().cylinderProperty().get()).isEqualTo(3);
    }

    @Test
    void arrowsAndEnterOpenACylinderForEntry(FxRobot robot) {
        robot.interact(() -> page.lookup(".tile").requestFocus());

        robot.type(KeyCode.RIGHT).type(KeyCode.DOWN).type(KeyCode.ENTER);
        robot.write("92").type(KeyCode.ENTER);

        assertThat(model.tile(4).values()).extracting(Tile.Value::figure).contains("92");
    }

    @Test
    void aRefusedReadingStaysInItsFieldWithASentence(FxRobot robot) {
        robot.interact(() -> page.lookup("#entry-value").requestFocus());

        robot.write("-158").type(KeyCode.ENTER);

        assertThat(robot.lookup(".refusal").queryAs(Label.class).getText()).isNotEmpty();
        assertThat(robot.lookup("#entry-value").queryTextInputControl().getText())
                .isEqualTo("-158");
    }

    private void paste(FxRobot robot, String text) {
        robot.interact(() -> {
            ClipboardContent content = new ClipboardContent();
            content.putString(text);
            Clipboard.getSystemClipboard().setContent(content);
            sheet.key(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.V, false, true, false, false));
        });
    }

    @Test
    void aColumnFromASpreadsheetIsReadCylinderByCylinder(FxRobot robot) {
        paste(robot, "158\n162\n155\n");

        assertThat(model.tile(1).values()).extracting(Tile.Value::figure).contains("158");
        assertThat(model.tile(3).values()).extracting(Tile.Value::figure).contains("155");
        assertThat(session.undoNameProperty().get()).isEqualTo("Add readings");
    }

    @Test
    void cylinderAndReadingMayStandSideBySide(FxRobot robot) {
        paste(robot, "cylinder\tdry\n6\t92\n2\t11 bar\n");

        assertThat(model.tile(6).values()).extracting(Tile.Value::figure).contains("92");
        assertThat(session.session().readings()).hasSize(2);
    }

    @Test
    void aTableIsTakenInWholeOrNotAtAllAndItsRowIsNamed(FxRobot robot) {
        paste(robot, "1\t158\n9\t162\n");

        assertThat(session.session().readings()).isEmpty();
        assertThat(robot.lookup(".refusal").queryAs(Label.class).getText())
                .startsWith("Row 2: ")
                .endsWith("Nothing was taken in.");
    }

    @Test
    void lettersChooseTheReadingsShownAndEscapeGoesBack(FxRobot robot) {
        paste(robot, "158\n162\n");
        robot.interact(() -> sheet.key(key(KeyCode.L)));
        assertThat(model.entry().testProperty().get()).isEqualTo(org.pullproof.health.TestKind.LEAKDOWN);
        assertThat(page.lookup("#entry-value")).isNotNull();

        robot.interact(() -> sheet.key(key(KeyCode.ESCAPE)));

        assertThat(page.lookup(".amount")).isNotNull();
        assertThat(page.lookup("#entry-value")).isNull();
    }

    @Test
    void anotherEngineGetsItsOwnTiles(FxRobot robot) {
        robot.interact(() -> model.entry().cylinderProperty().set(8));

        robot.interact(() -> session.act(open -> UiFixture.after(
                open, new Edit("Engine", now -> now.withProfile(SheetFixture.profile("i4-distributor"))))));

        assertThat(page.lookupAll(".tile")).hasSize(4);
        assertThat(model.entry().cylinderProperty().get()).isEqualTo(1);
    }

    @Test
    void f4AsksForTheTallySheetOfTheTestBeingTyped(FxRobot robot) {
        robot.interact(() -> sheet.key(key(KeyCode.F4)));

        assertThat(printed).hasValue(org.pullproof.health.TestKind.COMPRESSION_DRY);
    }

    @Test
    void f2TakesTheWholeWindowAndLeavingGivesItBack(FxRobot robot) {
        robot.interact(() -> sheet.key(key(KeyCode.F2)));
        assertThat(sheet.page().getValue()).isInstanceOf(SheetPage.Whole.class);

        robot.interact(fender::leave);

        assertThat(sheet.page().getValue()).isInstanceOf(SheetPage.Own.class);
    }

    @Test
    void f3ShowsTheGuideUnderAQuestionOfItsOwn(FxRobot robot) {
        robot.interact(() -> sheet.key(key(KeyCode.F3)));

        assertThat(sheet.page().getValue())
                .isInstanceOfSatisfying(
                        SheetPage.Headed.class,
                        page -> assertThat(page.answer().plain()).startsWith("Cylinder 1 is at TDC."));
    }

    private static KeyEvent key(KeyCode code) {
        return new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, false, false, false);
    }

    private long figures(String figure) {
        return page.lookupAll(".tile-figure").stream()
                .filter(node -> ((Label) node).getText().equals(figure))
                .count();
    }

    /** The picture shows what is being looked at: a cylinder, its plug, what the borescope sees, or the car. */
    @ParameterizedTest
    @CsvSource({
        "COMPRESSION_DRY, cylinder 6",
        "PLUG, plug of cylinder 6",
        "BORESCOPE, borescope in cylinder 6",
        "OIL_PRESSURE, the car"
    })
    void aPictureIsAttachedToWhatIsLookedAt(org.pullproof.health.TestKind test, String shown, FxRobot robot) {
        robot.interact(() -> {
            model.entry().cylinderProperty().set(6);
            model.entry().testProperty().set(test);
        });

        assertThat(page.lookupAll(".link"))
                .extracting(Node::getAccessibleText)
                .contains("Attach a picture of " + shown);
    }
}
