package org.pullproof.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pullproof.health.Conditions;
import org.pullproof.health.Reading;
import org.pullproof.session.Problem;
import org.pullproof.testing.Tools;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;

class ReadingActsTest {
    private final Toolbox tools = Tools.ofTheProgram();

    @TempDir
    private Path folder;

    private OpenSession open;

    @BeforeEach
    void makeASession() throws Exception {
        open = tools.desk().create(folder.resolve("car"), "car", Tools.profile("v8-distributor-order-a"));
    }

    private static Reading dry(int cylinder) {
        return new Reading.Compression(
                OptionalInt.of(cylinder),
                false,
                Quantity.of("158", Unit.PSI),
                Optional.empty(),
                1,
                Conditions.notRecorded(),
                LocalDateTime.of(2026, 6, 14, 10, 0),
                "");
    }

    private Path table(String... lines) throws Exception {
        return Files.write(
                folder.resolve("readings.csv"), String.join("\n", lines).getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void aTypedReadingIsKeptUnderItsName() throws Exception {
        OpenSession next = tools.recordReading().record(open, dry(3));
        assertThat(next.session().readings()).containsExactly(dry(3));
        assertThat(next.history().undoName()).hasValue("Record compression, cylinder 3");
    }

    @Test
    void aTypedReadingIsOnDisk() throws Exception {
        tools.recordReading().record(open, dry(3));
        assertThat(tools.desk().open(folder.resolve("car")).session().readings())
                .containsExactly(dry(3));
    }

    @Test
    void aCylinderThisEngineLacksIsRefused() {
        assertThatThrownBy(() -> tools.recordReading().record(open, dry(9))).hasMessageContaining("9 of 8");
    }

    @Test
    void aCorrectedReadingStandsInThePlaceOfTheMistypedOne() throws Exception {
        OpenSession two = tools.recordReading().record(tools.recordReading().record(open, dry(3)), dry(4));

        OpenSession next = tools.correctReading().correct(two, dry(3), dry(5));

        assertThat(next.session().readings()).containsExactly(dry(5), dry(4));
        assertThat(next.history().undoName()).hasValue("Correct compression, cylinder 5");
        assertThat(tools.desk().undo(next).session().readings()).containsExactly(dry(3), dry(4));
    }

    @Test
    void aReadingThatIsNotThereCannotBeCorrected() {
        assertThatThrownBy(() -> tools.correctReading().correct(open, dry(3), dry(4)))
                .hasMessageContaining("no such reading of compression, cylinder 3");
    }

    @Test
    void aRemovedReadingComesBackByUndo() throws Exception {
        OpenSession with = tools.recordReading().record(open, dry(3));
        OpenSession without = tools.removeReading().remove(with, dry(3));
        assertThat(without.session().readings()).isEmpty();
        assertThat(tools.desk().undo(without).session().readings()).containsExactly(dry(3));
    }

    @Test
    void removingWhatIsNotThereIsRefused() {
        assertThatThrownBy(() -> tools.removeReading().remove(open, dry(3))).hasMessageContaining("no such reading");
    }

    @Test
    void aTableIsOneEdit() throws Exception {
        AddReadings.Outcome outcome = tools.addReadings()
                .add(open, table("test,cylinder,value", "compression-dry,1,158psi", "compression-dry,2,160psi"));
        assertThat(outcome.added()).hasSize(2);
        assertThat(outcome.open().history().undoName()).hasValue("Add 2 readings");
    }

    @Test
    void semicolonsAndDecimalCommasAreUnderstood() throws Exception {
        AddReadings.Outcome outcome =
                tools.addReadings().add(open, table("test;cylinder;value", "compression-dry;1;1089,5 kPa"));
        assertThat(((Reading.Compression) outcome.added().get(0)).gauge().in(Unit.KPA))
                .isEqualTo(1089.5);
    }

    @Test
    void aWrongRowLeavesTheSessionAsItWasAndIsToldWithFileAndPlace() throws Exception {
        AddReadings.Outcome outcome = tools.addReadings()
                .add(open, table("test,cylinder,value", "compression-dry,1,158psi", "compression-dry,9,160psi"));
        assertThat(outcome.open()).isSameAs(open);
        assertThat(outcome.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.file()).endsWith("readings.csv");
            assertThat(problem.place()).isEqualTo("row 3, column cylinder");
        });
        assertThat(tools.desk().open(folder.resolve("car")).session().readings())
                .isEmpty();
    }

    @Test
    void aFileThatIsNotThereIsAProblem() throws Exception {
        assertThat(tools.addReadings().add(open, folder.resolve("none.csv")).problems())
                .extracting(Problem::message)
                .containsExactly("there is no such file or folder.");
    }
}
