package org.pullproof.ui.dynoday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.ComboBox;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.pullproof.HeadlessFx;
import org.pullproof.ui.DeskFixture;
import org.pullproof.ui.SheetFixture;
import org.pullproof.ui.Snapshots;
import org.pullproof.ui.dynoday.DynoDayViewModel.Row;
import org.pullproof.ui.shell.SheetPage;
import org.pullproof.units.Unit;
import org.pullproof.weather.AirCheck;
import org.pullproof.weather.Correction;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** A file whose headers nobody knows is asked about in three clicks, and files like it are not asked about again. */
@ExtendWith({HeadlessFx.class, ApplicationExtension.class})
class MappingPageTest {
    private final DeskFixture desk;
    private final Path folder;
    private DynoDayViewModel model;
    private DynoDaySheet sheet;
    private VBox page;

    MappingPageTest(@TempDir Path place) throws Exception {
        folder = place;
        desk = new DeskFixture(place);
    }

    @Start
    void open(Stage stage) {
        DeskDynoActs acts = new DeskDynoActs(
                desk.tools().recordAir(),
                desk.tools().addPulls(),
                desk.tools().foreignFiles(),
                desk.tools().excludePull(),
                desk.tools().setFacts());
        AirViewModel air = new AirViewModel(desk.model(), acts, new Correction(), new AirCheck(), SheetFixture.CLOCK);
        model = new DynoDayViewModel(desk.model(), acts, air, Runnable::run);
        DayViewModel day =
                new DayViewModel(desk.model(), new DeskDayActs(desk.tools().prepareDay()), SheetFixture.CLOCK);
        sheet = new DynoDaySheet(model, day, DynoPictures.watch(model), List::of, picture -> {}, List.of());
        page = new VBox(sheet.node());
        Scene scene = new Scene(page, 828, 640);
        scene.getStylesheets().add("/org/pullproof/ui/pullproof.css");
        stage.setScene(scene);
        stage.show();
    }

    /** Torque 200 N·m at every speed: at 3,000 rpm 200 · 3000 · π/30 = 62.83 kW, at the top 6,000 rpm 125.66 kW. */
    private Path foreign(String name) throws IOException {
        StringBuilder table = new StringBuilder("Umdrehung;Kraftmoment;Zeit\n");
        for (int rpm = 3000; rpm <= 6000; rpm += 50) {
            table.append(rpm).append(";200,0;").append(rpm / 1000).append('\n');
        }
        return Files.writeString(folder.resolve(name), table);
    }

    @Test
    void threeClicksTakeItInAndTheNextIsNotAskedAbout(FxRobot robot) throws Exception {
        Path first = foreign("lauf1.csv");
        robot.interact(() -> model.takeIn(List.of(first)));
        assertThat(sheet.page().getValue()).isInstanceOf(SheetPage.Headed.class);

        choose(robot, "#mapping-speed", "Umdrehung");
        choose(robot, "#mapping-value", "Kraftmoment");
        assertThat(mapping().previewProperty().get().problem()).contains("Say its unit.");
        choose(robot, "#mapping-unit", Unit.NM);
        assertThat(mapping().previewProperty().get().pulls()).hasSize(1);
        Snapshots.write(page.getScene(), "dyno-mapping");
        robot.clickOn("#mapping-take");

        assertThat(model.rows()).hasSize(1);
        assertThat(model.rows().get(0).pull().peakMeasuredKw()).isCloseTo(125.66, within(0.01));
        Path second = foreign("lauf2.csv");
        robot.interact(() -> model.takeIn(List.of(second)));
        assertThat(model.takingIn().mappingProperty().get()).isEmpty();
        assertThat(model.rows()).extracting(Row::name).hasSize(2);
    }

    @Test
    void theFirstRowsOfTheFileAreShown(FxRobot robot) throws Exception {
        Path file = foreign("lauf.csv");
        robot.interact(() -> model.takeIn(List.of(file)));
        assertThat(robot.lookup("Kraftmoment").tryQuery()).isPresent();
        assertThat(robot.lookup("3050").tryQuery()).isPresent();
    }

    @Test
    void leavingItTakesNothingIn(FxRobot robot) throws Exception {
        Path file = foreign("lauf.csv");
        robot.interact(() -> model.takeIn(List.of(file)));
        robot.clickOn("#mapping-leave");
        assertThat(model.takingIn().mappingProperty().get()).isEmpty();
        assertThat(model.rows()).isEmpty();
    }

    @Test
    void theSameColumnForBothIsAnsweredAtOnce(FxRobot robot) throws Exception {
        Path file = foreign("lauf.csv");
        robot.interact(() -> model.takeIn(List.of(file)));
        choose(robot, "#mapping-speed", "Zeit");
        choose(robot, "#mapping-value", "Kraftmoment");
        choose(robot, "#mapping-unit", Unit.HP);
        assertThat(mapping().previewProperty().get().problem())
                .isPresent()
                .hasValueSatisfying(said -> assertThat(said).endsWith("."));
        assertThat(page.lookup("#mapping-take").isDisabled()).isTrue();
    }

    @Test
    void aFileThatIsNoTableIsNotAskedAbout(FxRobot robot) throws Exception {
        Path file = Files.writeString(folder.resolve("notes.txt"), "went well\n");
        robot.interact(() -> model.takeIn(List.of(file)));
        assertThat(model.takingIn().mappingProperty().get()).isEmpty();
        assertThat(model.problemProperty().get()).contains("notes.txt");
    }

    private MappingViewModel mapping() {
        return model.takingIn().mappingProperty().get().orElseThrow();
    }

    private static <T> void choose(FxRobot robot, String id, T value) {
        ComboBox<T> box = robot.lookup(id).queryComboBox();
        robot.interact(() -> box.setValue(value));
    }
}
