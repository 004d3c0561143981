package org.pullproof.ui.health;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.app.OpenSession;
import org.pullproof.health.TestKind;
import org.pullproof.ui.SheetFixture;
import org.pullproof.ui.UiFixture;
import org.pullproof.ui.shell.SessionViewModel;

class HealthViewModelTest {
    private final SessionViewModel session = session(UiFixture.open());
    private final HealthViewModel model = new HealthViewModel(session, rules(), new TypedReadings());

    private static SessionViewModel session(OpenSession open) {
        return SheetFixture.model(
                open, (now, figures) -> SheetFixture.withHealth(now, figures, SheetFixture.oneLow(now)));
    }

    /** The rules of tables of readings, at the time of the fixture. */
    static ReadingRules rules() {
        return new SheetReadingRules(UiFixture::v8, SheetFixture.CLOCK);
    }

    @Test
    void aRunBrokenOffIsTheTestThatWaits() {
        OpenSession begun = UiFixture.after(
                UiFixture.open(),
                new org.pullproof.session.Edit(
                        "Record",
                        now -> now.withReadings(java.util.List.of(new org.pullproof.health.Reading.Balance(
                                java.util.OptionalInt.of(1),
                                org.pullproof.units.Quantity.of("62", org.pullproof.units.Unit.RPM),
                                1,
                                org.pullproof.health.Conditions.notRecorded(),
                                java.time.LocalDateTime.of(2026, 6, 14, 12, 0),
                                "")))));

        HealthViewModel again = new HealthViewModel(session(begun), rules(), new TypedReadings());

        assertThat(again.entry().testProperty().get()).isEqualTo(TestKind.BALANCE);
    }

    @Test
    void aTileSaysInWordsAndFiguresHowTheCylinderStands() {
        Tile six = model.tile(6);

        assertThat(six.words()).isEqualTo("low, air at the exhaust");
        assertThat(six.values()).extracting(Tile.Value::figure).containsExactly("19", "58", "92", "95", "93");
    }

    @Test
    void whatWasNotMeasuredIsADashAndNeverZero() {
        assertThat(model.tile(1).values()).extracting(Tile.Value::figure).endsWith("–", "–");
    }

    @Test
    void theBareFigureTakesTheUnitBesideTheField() {
        model.entry().testProperty().set(TestKind.COMPRESSION_DRY);
        assertThat(model.entry().read(EntryColumn.VALUE, "158")).isEqualTo("158 psi");
    }

    @ParameterizedTest
    @CsvSource({"14, 14 %", "62psi, 62psi", "high, high"})
    void aLeakIsAPercentageAPressureOrAZone(String typed, String recorded) {
        model.entry().testProperty().set(TestKind.LEAKDOWN);
        assertThat(model.entry().read(EntryColumn.VALUE, typed)).isEqualTo(recorded);
    }

    @Test
    void aWordThatIsNoAnswerIsRefusedWithTheAnswersThereAre() {
        assertThatThrownBy(() -> model.keepWhole(TestKind.COOLANT_GAS, "perhaps"))
                .hasMessageContaining("positive, negative");
    }

    @Test
    void keepingGoesOnToTheNextCylinderAndForgetsTheReading() {
        model.entry().testProperty().set(TestKind.COMPRESSION_DRY);
        model.entry().put(EntryColumn.VALUE, "158 psi");
        model.entry().put(EntryColumn.STROKES, "6");

        model.keep();

        assertThat(model.entry().cylinderProperty().get()).isEqualTo(2);
        assertThat(model.entry().text(EntryColumn.VALUE)).isEmpty();
        assertThat(model.entry().text(EntryColumn.STROKES)).isEqualTo("6");
    }

    @Test
    void leakDownGoesOnInFiringOrderBecauseTheCrankIsTurned() {
        model.entry().testProperty().set(TestKind.LEAKDOWN);

        model.entry().next();

        assertThat(model.entry().cylinderProperty().get()).isEqualTo(8);
    }

    @Test
    void afterTheLastCylinderComesTheFirst() {
        model.entry().testProperty().set(TestKind.COMPRESSION_DRY);
        model.entry().cylinderProperty().set(8);

        model.entry().next();

        assertThat(model.entry().cylinderProperty().get()).isEqualTo(1);
    }

    @Test
    void aRefusedReadingKeepsWhatWasTyped() {
        model.entry().testProperty().set(TestKind.COMPRESSION_DRY);
        model.entry().put(EntryColumn.VALUE, "-158 psi");

        assertThatThrownBy(model::keep).isInstanceOf(ReadingRules.RefusedEntry.class);

        assertThat(model.entry().text(EntryColumn.VALUE)).isEqualTo("-158 psi");
        assertThat(model.entry().cylinderProperty().get()).isEqualTo(1);
    }

    @Test
    void aRemovedReadingComesBackWithUndo() {
        model.entry().testProperty().set(TestKind.COMPRESSION_DRY);
        model.entry().put(EntryColumn.VALUE, "158 psi");
        model.keep();
        model.entry().cylinderProperty().set(1);
        model.remove(model.readings().get(0).reading());
        assertThat(model.readings()).isEmpty();

        session.undo();

        assertThat(model.readings()).hasSize(1);
    }

    @Test
    void theReadingsOfACylinderStandWithHowTheyWereMade() {
        OpenSession open = UiFixture.after(
                UiFixture.open(),
                new org.pullproof.session.Edit(
                        "Record", now -> now.withReadings(java.util.List.of(SheetFixture.compression(6, 92)))));
        HealthViewModel read = new HealthViewModel(session(open), rules(), new TypedReadings());
        read.entry().cylinderProperty().set(6);

        assertThat(read.readings()).singleElement().satisfies(row -> {
            assertThat(row.value()).isEqualTo("92\u00a0psi");
            assertThat(row.how()).isEqualTo("6 strokes, throttle open, all plugs out");
        });
    }

    @Test
    void theWholeEngineShowsTheLastSignOfEachKind() {
        model.keepWhole(TestKind.COOLANT_GAS, "positive");
        model.keepWhole(TestKind.COOLANT_GAS, "negative");

        assertThat(model.wholeEngine())
                .filteredOn(sign -> sign.test() == TestKind.COOLANT_GAS)
                .extracting(WholeEngine::value)
                .containsExactly("negative");
    }

    @Test
    void theTableCopiedHasARowForEachCylinder() {
        assertThat(model.table().lines()).hasSize(9).contains("6\tlow, air at the exhaust\t19\t58\t92\t95\t93");
    }

    @ParameterizedTest
    @CsvSource({"1, RIGHT, 3", "3, LEFT, 1", "3, DOWN, 4", "4, UP, 3", "1, LEFT, 1", "7, RIGHT, 7"})
    void arrowsMoveByPlaceOnThePlan(int from, javafx.scene.input.KeyCode arrow, int to) {
        assertThat(Neighbours.of(model.rows(), from, arrow)).isEqualTo(to);
    }

    @Test
    void aSignOfTheWholeEngineStandsWithTheEngineAndNotWithACylinder() {
        model.entry().testProperty().set(TestKind.CHAIN_SLACK);
        model.entry().put(EntryColumn.VALUE, model.entry().read(EntryColumn.VALUE, "6"));
        model.keep();

        assertThat(model.readings()).singleElement().satisfies(row -> {
            assertThat(row.test()).isEqualTo("Cam drive slack");
            assertThat(row.value().replace('\u00a0', ' ')).isEqualTo("6 °");
            assertThat(row.reading().cylinder()).isEmpty();
        });
        model.entry().testProperty().set(TestKind.COMPRESSION_DRY);
        assertThat(model.readings()).isEmpty();
    }
}
