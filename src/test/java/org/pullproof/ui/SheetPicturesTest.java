package org.pullproof.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.pullproof.HeadlessFx;
import org.pullproof.app.OpenSession;
import org.pullproof.app.Toolbox;
import org.pullproof.health.TestKind;
import org.pullproof.session.Edit;
import org.pullproof.testing.Tools;
import org.pullproof.ui.car.CarSheet;
import org.pullproof.ui.car.CarViewModel;
import org.pullproof.ui.changes.ChangesPictures;
import org.pullproof.ui.dynoday.DynoPictures;
import org.pullproof.ui.health.HealthPictures;
import org.pullproof.ui.parts.Fonts;
import org.pullproof.ui.shell.MainView;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.ui.shell.Sheet;
import org.pullproof.ui.tuneup.TuneUpPictures;
import org.pullproof.ui.worth.WorthPictures;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** Draws every sheet at the sizes of the look, on paper and at night; no words may be cut short. */
@ExtendWith({HeadlessFx.class, ApplicationExtension.class})
class SheetPicturesTest {
    @Start
    void open(Stage stage) {
        Fonts.load();
        stage.show();
    }

    @ParameterizedTest
    @CsvSource({"1280, 800, false", "1280, 800, true", "1280, 720, false", "1920, 1080, false"})
    void health(double width, double height, boolean night) {
        OpenSession open = UiFixture.after(
                UiFixture.open(),
                new Edit(
                        "Record",
                        now -> now.withReadings(List.of(
                                SheetFixture.compression(6, 92),
                                SheetFixture.compression(6, 95),
                                SheetFixture.sign(TestKind.OBSERVATION, "no-knock")))));
        SessionViewModel model = SheetFixture.model(
                open, (now, figures) -> SheetFixture.withHealth(now, figures, SheetFixture.oneLow(now)));
        picture("health", model, HealthPictures.sheet(model, 6), width, height, night);
    }

    @ParameterizedTest
    @CsvSource({"1280, 800, false", "1280, 800, true", "1920, 1080, false"})
    void car(double width, double height, boolean night, @TempDir Path config) {
        Toolbox tools = Tools.with(config);
        SessionViewModel model = SheetFixture.model(WorthFixture.open(), WorthFixture::appraise);
        CarViewModel car = new CarViewModel(
                model,
                tools.setFacts(),
                tools.chooseProfile(),
                List.of(model.session().profile()));
        picture("car", model, Snapshots.onFx(() -> new CarSheet(car)), width, height, night);
    }

    @ParameterizedTest
    @ValueSource(strings = {"i4-distributor", "i6-coil-on-plug", "flat6-coil-on-plug", "v12-coil-on-plug"})
    void healthOfOtherEngines(String profile) {
        OpenSession open = UiFixture.after(
                UiFixture.open(), new Edit("Engine", now -> now.withProfile(SheetFixture.profile(profile))));
        SessionViewModel model = SheetFixture.model(open, UiFixture::appraise);
        picture("health-" + profile, model, HealthPictures.sheet(model, 2), 1280, 800, false);
    }

    @Test
    void leakDown() {
        SessionViewModel model = SheetFixture.model(UiFixture.open(), UiFixture::appraise);
        picture("health-leakdown", model, HealthPictures.sheet(model, 2, TestKind.LEAKDOWN), 1280, 800, false);
    }

    @ParameterizedTest
    @CsvSource({
        "v6-odd-fire-90, 6, 1280, 800, false",
        "v6-odd-fire-90, 6, 1280, 800, true",
        "v6-odd-fire-90, 6, 1280, 720, false",
        "v6-odd-fire-90, 6, 1920, 1080, false",
        "i4-coil-on-plug, 3, 1280, 800, false",
        "i4-coil-on-plug, 3, 1280, 800, true",
        "i4-coil-on-plug, 3, 1920, 1080, false",
        "v12-coil-on-plug, 1, 1280, 800, false",
        "flat4-distributor, 2, 1280, 800, false"
    })
    void tdcGuide(String profile, int cylinder, double width, double height, boolean night) {
        SessionViewModel model = SheetFixture.model(engine(profile), UiFixture::appraise);
        picture("tdc-" + profile, model, HealthPictures.tdc(model, cylinder), width, height, night);
    }

    private static OpenSession engine(String profile) {
        return UiFixture.after(
                UiFixture.open(), new Edit("Engine", now -> now.withProfile(SheetFixture.profile(profile))));
    }

    @ParameterizedTest
    @CsvSource({
        "COMPRESSION_DRY, 1280, 800, false",
        "COMPRESSION_DRY, 1280, 800, true",
        "COMPRESSION_DRY, 1280, 720, false",
        "COMPRESSION_DRY, 1920, 1080, false",
        "BALANCE, 1280, 800, false",
        "LEAKDOWN, 1280, 800, false",
        "PLUG, 1280, 800, false"
    })
    void fenderModeBeforeTheFirstReading(TestKind test, double width, double height, boolean night) {
        SessionViewModel model = SheetFixture.model(UiFixture.open(), UiFixture::appraise);
        picture("fender-before-" + test.key(), model, HealthPictures.fenderBefore(model, test), width, height, night);
    }

    @ParameterizedTest
    @CsvSource({
        "COMPRESSION_DRY, '158 162 155 160 157 92', 1280, 800, false",
        "COMPRESSION_DRY, '158 162 155 160 157 92', 1280, 800, true",
        "COMPRESSION_DRY, '158 162 155 160 157 92', 1280, 720, false",
        "COMPRESSION_DRY, '158 162 155 160 157 92', 1920, 1080, false",
        "COMPRESSION_DRY, '158 162 155 160 157 92', 1920, 1080, true",
        "LEAKDOWN, '8 E 93', 1280, 800, false",
        "LEAKDOWN, '8 E', 1280, 800, true",
        "PLUG, '1 1 5', 1280, 800, false",
        "BALANCE, '62 58', 1280, 720, false"
    })
    void fenderMode(TestKind test, String figures, double width, double height, boolean night) {
        SessionViewModel model = SheetFixture.model(UiFixture.open(), UiFixture::appraise);
        Sheet sheet = HealthPictures.fenderTyped(model, test, figures.split(" ", -1));
        picture("fender-" + test.key() + figures.length(), model, sheet, width, height, night);
    }

    @Test
    void fenderModeOfTwelveCylinders() {
        SessionViewModel model = SheetFixture.model(engine("v12-coil-on-plug"), UiFixture::appraise);
        Sheet sheet = HealthPictures.fenderTyped(model, TestKind.COMPRESSION_DRY, "158", "162");
        picture("fender-v12", model, sheet, 1280, 800, false);
    }

    @ParameterizedTest
    @CsvSource({"1280, 800, false", "1280, 800, true", "1280, 720, false", "1920, 1080, false"})
    void dynoDay(double width, double height, boolean night) {
        SessionViewModel model = SheetFixture.model(DynoFixture.open(), DynoFixture::appraise);
        picture("dyno", model, DynoPictures.sheet(model), width, height, night);
    }

    @ParameterizedTest
    @CsvSource({"1280, 800, false"})
    void dynoDayBeforeTheFirstPull(double width, double height, boolean night) {
        SessionViewModel model = SheetFixture.model(UiFixture.open(), DynoFixture::appraise);
        picture("dyno-empty", model, DynoPictures.sheet(model), width, height, night);
    }

    @ParameterizedTest
    @CsvSource({"1280, 800, false", "1280, 800, true", "1920, 1080, false", "1920, 1080, true"})
    void airBeingTyped(double width, double height, boolean night) {
        SessionViewModel model = SheetFixture.model(DynoFixture.open(), DynoFixture::appraise);
        picture("dyno-air", model, DynoPictures.airBeingTyped(model), width, height, night);
    }

    @ParameterizedTest
    @CsvSource({"1280, 800, false", "1280, 800, true", "1280, 720, false", "1920, 1080, false"})
    void changes(double width, double height, boolean night) {
        SessionViewModel model = SheetFixture.model(DynoFixture.open(), DynoFixture::appraise);
        picture("changes", model, ChangesPictures.sheet(model), width, height, night);
    }

    @ParameterizedTest
    @CsvSource({"1280, 800, false"})
    void changesBeforeTheFirst(double width, double height, boolean night) {
        SessionViewModel model = SheetFixture.model(UiFixture.open(), DynoFixture::appraise);
        picture("changes-empty", model, ChangesPictures.sheet(model), width, height, night);
    }

    @ParameterizedTest
    @CsvSource({"1280, 800, false", "1280, 800, true", "1280, 720, false", "1920, 1080, false"})
    void worthIt(double width, double height, boolean night) {
        SessionViewModel model = SheetFixture.model(WorthFixture.open(), WorthFixture::appraise);
        picture("worth", model, WorthPictures.sheet(model), width, height, night);
    }

    @ParameterizedTest
    @CsvSource({"1280, 800, false", "1280, 800, true", "1280, 720, false", "1920, 1080, false", "1920, 1080, true"})
    void tuneUp(double width, double height, boolean night, @TempDir Path folder) throws IOException {
        Toolbox tools = Tools.with(folder.resolve("config"));
        SessionViewModel model = SheetFixture.model(
                TuneUpPictures.halfDone(tools, folder),
                (now, figures) -> tools.appraise().of(now, figures));
        picture("tuneup", model, Snapshots.onFx(() -> TuneUpPictures.sheet(model, tools)), width, height, night);
    }

    private void picture(String name, SessionViewModel model, Sheet sheet, double width, double height, boolean night) {
        model.stageProperty().set(sheet.stage());
        Scene scene = Snapshots.onFx(() -> scene(model, sheet, width, height, night));
        Snapshots.write(scene, name + "-" + (int) width + "x" + (int) height + (night ? "-night" : ""));
        assertThat(Snapshots.cutShort(scene.getRoot())).isEmpty();
        assertThat(Snapshots.outside(scene.getRoot())).isEmpty();
        assertThat(Snapshots.tooLong(scene.getRoot())).isEmpty();
    }

    /** The scene stands alone: the screen without a display is only 1280 by 800. */
    private static Scene scene(SessionViewModel model, Sheet sheet, double width, double height, boolean night) {
        MainView view = new MainView(model, stage -> sheet, UiFixture.shellActs());
        Scene scene = new Scene(view, width, height);
        scene.getStylesheets().add("/org/pullproof/ui/pullproof.css");
        if (night) {
            view.getStyleClass().add("night");
        }
        return scene;
    }
}
