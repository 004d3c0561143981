package org.pullproof.ui.tuneup;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.pullproof.HeadlessFx;
import org.pullproof.tuneup.TuneUp;
import org.pullproof.ui.DeskFixture;
import org.pullproof.ui.Snapshots;
import org.pullproof.ui.parts.Fonts;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** The sheet Tune-up worked by its controls, on a session on the disk. */
@ExtendWith({HeadlessFx.class, ApplicationExtension.class})
class TuneUpSheetTest {
    @TempDir
    private Path folder;

    private Stage stage;
    private DeskFixture desk;
    private TuneUpSheet sheet;

    @Start
    void open(Stage window) {
        Fonts.load();
        stage = window;
    }

    @BeforeEach
    void show() throws IOException {
        desk = new DeskFixture(folder);
        sheet = Snapshots.onFx(() -> {
            TuneUpSheet made = TuneUpPictures.sheet(desk.model(), desk.tools());
            Scene scene = new Scene((Parent) made.node(), 828, 560);
            scene.getStylesheets().add("/org/pullproof/ui/pullproof.css");
            stage.setScene(scene);
            stage.show();
            return made;
        });
    }

    private static void fx(Runnable act) {
        WaitForAsyncUtils.waitForAsyncFx(20_000, act);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private <T extends Node> T named(Class<T> kind, String accessibleText) {
        return sheet.node().lookupAll("*").stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .filter(node -> accessibleText.equals(node.getAccessibleText()))
                .findFirst()
                .orElseThrow(() -> new AssertionError("There is no " + accessibleText));
    }

    private void type(String field, String text) {
        fx(() -> {
            TextField into = named(TextField.class, field);
            into.setText(text);
            into.fireEvent(new javafx.event.ActionEvent());
        });
    }

    private TuneUp tuneUp() {
        return desk.model().open().session().tuneUp();
    }

    private void tick(String... steps) {
        Consumer<String> tick = step -> fx(() -> {
            TuneUpViewModel model =
                    new TuneUpViewModel(desk.model(), desk.tools(), org.pullproof.ui.SheetFixture.CLOCK);
            model.findings().steps().stream()
                    .filter(state -> state.step().id().equals(step))
                    .findFirst()
                    .ifPresent(model::toggle);
        });
        List.of(steps).forEach(tick);
    }

    @Test
    void whatComesOffBesideTheStepsLiesOnTheShelfWithItsNote() {
        type("Something else came off", "hose of the canister");
        type("Note on hose of the canister", "in the left tray");

        assertThat(tuneUp().bench().added()).hasSize(1);
        assertThat(tuneUp().bench().note("hose of the canister").note()).isEqualTo("in the left tray");

        fx(() -> named(Button.class, "Put back: hose of the canister").fire());
        assertThat(tuneUp().back()).contains("hose of the canister");
    }

    @Test
    void aPlugThatIsBackOnOneCylinderIsTickedThere() {
        tick("a", "b", "c", "d", "e");
        fx(() -> named(CheckBox.class, "plugs back on cylinder 3").fire());
        assertThat(tuneUp().bench().note("plugs").fitted()).containsExactly(3);

        fx(() -> named(CheckBox.class, "plugs back on cylinder 3").fire());
        assertThat(tuneUp().bench().note("plugs").fitted()).isEmpty();
    }

    @Test
    void aPartThatIsBoughtStandsAmongTheMoneySpent() {
        type("Price of spark plugs", "44");
        fx(() -> sheet.node().lookupAll(".toggle-button").stream()
                .map(javafx.scene.control.ToggleButton.class::cast)
                .filter(button -> "spark plugs bought".equals(button.getAccessibleText()))
                .forEach(javafx.scene.control.ToggleButton::fire));

        assertThat(desk.model().open().session().money().spent())
                .singleElement()
                .satisfies(paid -> assertThat(paid.amount().toString()).isEqualTo("44 USD"));
    }

    @Test
    void settingsAreKeptAndSavedAsASetup() {
        type("Base timing, vacuum hose off and plugged", "10");
        fx(() -> sheet.node().lookupAll(".button").stream()
                .map(Button.class::cast)
                .filter(button -> button.getText().equals("Save as setup"))
                .forEach(Button::fire));

        assertThat(desk.model().open().session().present().name()).isEqualTo("as tuned");
        assertThat(desk.model().open().session().present().levels()).containsKey("base-timing");
    }

    @Test
    void aPlugsHeatRangeAndLookAreKept() {
        type("Plug 2, heat range as marked", "7");
        fx(() -> {
            @SuppressWarnings("unchecked")
            ComboBox<String> look = (ComboBox<String>) (ComboBox<?>) named(ComboBox.class, "Plug 2, look as found");
            look.setValue("oily");
        });

        assertThat(tuneUp().plugs())
                .singleElement()
                .satisfies(plug -> assertThat(plug.heatRange()).isEqualTo("7"));
        assertThat(desk.model().open().session().readings()).hasSize(1);
    }

    @Test
    void workDoneIsRecordedForItsCylinders() {
        fx(() -> {
            @SuppressWarnings("unchecked")
            ComboBox<String> work = (ComboBox<String>) sheet.node().lookup("#work-done");
            work.setValue("coil");
            named(TextField.class, "Cylinders the work was done on").setText("2, 3");
            sheet.node().lookupAll(".button").stream()
                    .map(Button.class::cast)
                    .filter(button -> button.getText().equals("Work done"))
                    .forEach(Button::fire);
        });
        assertThat(desk.model().open().session().readings()).hasSize(2);
    }

    @Test
    void theKeysGoToPlugsShelfAndGate() {
        press(KeyCode.P);
        assertThat(stage.getScene().getFocusOwner()).isEqualTo(named(TextField.class, "Plug 1, gap as found"));
        press(KeyCode.S);
        assertThat(stage.getScene().getFocusOwner()).isEqualTo(named(TextField.class, "Something else came off"));
        press(KeyCode.G);
        assertThat(stage.getScene().getFocusOwner().getAccessibleText()).isEqualTo("Start gate");
    }

    @Test
    void aStepIsEditedForThisCarAndACircleIsRefusedInWords() {
        fx(() -> button("edit this step for this car").fire());
        type("Title of the step", "Read codes, then cool down");
        type("Minutes of the step", "25");
        fx(() -> button("Keep for this car").fire());
        assertThat(tuneUp().own().orElseThrow().require("a").minutes()).isEqualTo(25);

        fx(() -> button("edit this step for this car").fire());
        type("Steps that come first", "c");
        fx(() -> button("Keep for this car").fire());
        assertThat(tuneUp().own().orElseThrow().require("a").needs()).isEmpty();
        assertThat(sheet.node().lookupAll(".refusal").stream()
                        .map(Label.class::cast)
                        .map(Label::getText))
                .anyMatch(text -> text.contains("circle"));
    }

    private Button button(String words) {
        return sheet.node().lookupAll(".button").stream()
                .map(Button.class::cast)
                .filter(button -> button.getText().equals(words))
                .findFirst()
                .orElseThrow(() -> new AssertionError("There is no button " + words));
    }

    private void press(KeyCode code) {
        fx(() -> sheet.key(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, false, false, false)));
    }

    @Test
    void theActOfTheChosenStepTellsToolsAndFigures() {
        fx(() -> named(ListView.class, "Steps in order").getSelectionModel().select(7));
        assertThat(sheet.node().lookupAll(".label").stream()
                        .map(Label.class::cast)
                        .map(Label::getText))
                .anyMatch(text -> text.contains("torque wrench") && text.contains("the maker's manual comes first"));
    }

    @Test
    void theNumberOfAPlugShowsItsPictures() {
        fx(() -> named(Button.class, "Show the pictures of plug 3").fire());

        Button attach = named(Button.class, "Attach a picture of plug of cylinder 3");
        assertThat(attach.isFocused()).isTrue();
    }
}
