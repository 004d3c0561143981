package org.pullproof.ui.dynoday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.car.Fact;
import org.pullproof.engine.Setup;
import org.pullproof.session.Edit;
import org.pullproof.ui.DynoFixture;
import org.pullproof.ui.SheetFixture;
import org.pullproof.ui.UiFixture;
import org.pullproof.ui.dynoday.AirEntry.Part;
import org.pullproof.ui.dynoday.DynoDayViewModel.Row;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.units.Figures;
import org.pullproof.units.UnitSystem;

class DynoDayViewModelTest {
    private static final Figures US = new Figures(UnitSystem.US);

    private final SessionViewModel session = SheetFixture.model(UiFixture.open(), DynoFixture::appraise);
    private final DynoPictures.Acts acts = new DynoPictures.Acts();
    private final DynoDayViewModel model = DynoPictures.model(session, acts);

    private void garageLiesAt(String elevation) {
        session.act(open -> UiFixture.after(
                open, new Edit("Set", now -> now.withCar(now.car().with(Fact.ELEVATION, elevation)))));
    }

    private void typeAir(String pressure, String temperature, String humidity) {
        model.air().take(Part.PRESSURE, pressure, US);
        model.air().take(Part.TEMPERATURE, temperature, US);
        model.air().take(Part.HUMIDITY, humidity, US);
    }

    /**
     * 98.6 kPa, 27 °C, 55 %: saturation pressure 3.567 kPa (steam tables, from memory), so 96.64 kPa dry, and 1.18 (99/96.64)
     * √(300/298) − 0.18 = 1.0329 by the formula of SAE J1349.
     */
    @Test
    void theFactorStandsAsSoonAsAllThreePartsAreTyped() {
        typeAir("98.6kPa", "27.0C", "55");

        assertThat(model.factorWords()).startsWith("1.0329 ± 0.0007").endsWith("SAE J1349, in range");
    }

    @Test
    void withoutHumidityThereIsNoFactorAndItSaysWhatItWaitsFor() {
        model.air().take(Part.PRESSURE, "29.1", US);
        model.air().take(Part.TEMPERATURE, "80", US);

        assertThat(model.factorWords()).isEqualTo("–");
        assertThat(model.air().waitsFor()).contains("Waits for the humidity.");
    }

    @ParameterizedTest
    @CsvSource({
        "PRESSURE, 2.9, station pressure",
        "TEMPERATURE, 400, temperature",
        "HUMIDITY, 140, humidity",
        "PRESSURE, 80F, pressure"
    })
    void anImpossiblePartIsRefusedInItsOwnWords(Part part, String typed, String words) {
        assertThatThrownBy(() -> model.air().take(part, typed, US)).hasMessageContaining(words);
    }

    /** A garage at 5,250 ft with 30.02 inHg: the example of the error sheet. */
    @Test
    void anAltimeterSettingIsRefusedAtAHighGarageWithAWayOut() {
        garageLiesAt("5250ft");

        assertThatThrownBy(() -> model.air().take(Part.PRESSURE, "30.02", US))
                .hasMessageContaining("looks like an altimeter setting");
        assertThat(model.air().lookalike())
                .hasValueSatisfying(
                        likeness -> assertThat(likeness.stationWords()).isEqualTo("24.75 inHg"));
    }

    @Test
    void aRefusedPressureDoesNotStandForTheOldOne() {
        typeAir("29.1", "80", "40");
        assertThatThrownBy(() -> model.air().take(Part.PRESSURE, "291", US)).hasMessageContaining("station pressure");

        assertThat(model.factorWords()).isEqualTo("–");
    }

    @Test
    void usedAirBecomesTheReadingOfThisMinute() {
        typeAir("29.1", "80", "40");

        model.useAir();

        assertThat(model.latestAir()).hasValueSatisfying(reading -> {
            assertThat(reading.time()).isEqualTo("2026-06-14T14:02");
            assertThat(reading.air().barometer().words()).isEqualTo("station pressure 29.1 inHg");
        });
    }

    @Test
    void airOlderThanTwentyMinutesIsToBeReadAgain() {
        DynoDayViewModel day = DynoPictures.model(SheetFixture.model(DynoFixture.open(), DynoFixture::appraise), acts);

        assertThat(day.airAge()).isEqualTo("typed 13:40, 22\u00a0min ago");
        assertThat(day.airIsOld()).isTrue();
    }

    @Test
    void filesGoToTheSetupThatWasNamed() {
        model.setupProperty().set("timing 32°");

        model.takeIn(List.of(Path.of("a.csv"), Path.of("b.csv")));

        assertThat(acts.taken).containsExactly(Path.of("a.csv"), Path.of("b.csv"));
        assertThat(acts.setup).isEqualTo("timing 32°");
    }

    @Test
    void aRowLeftOutOfAFileIsSaidOnTheSheet() {
        model.takeIn(List.of(Path.of("a.csv")));

        assertThat(model.leftOut()).containsExactly("a.csv, line 9: the row is not a sample");
    }

    @Test
    void filesWithoutASetupAreNotTakenInAndTheSheetAsksForIt() {
        model.setupProperty().set(" ");

        model.takeIn(List.of(Path.of("a.csv")));

        assertThat(acts.taken).isEmpty();
        assertThat(model.problemProperty().get()).isEqualTo("Say first which setup these pulls were made on.");
    }

    @Test
    void aFileThatCannotBeReadIsSaidOnTheSheet() {
        model.takeIn(List.of(Path.of("scan.pdf")));

        assertThat(model.problemProperty().get()).isEqualTo("scan.pdf: the file has no rpm column");
    }

    @Test
    void theListNamesEveryPullAndMarksTheExcludedOne() {
        DynoDayViewModel day = DynoPictures.model(SheetFixture.model(DynoFixture.open(), DynoFixture::appraise), acts);

        assertThat(day.rows()).hasSize(11);
        assertThat(day.rows()).filteredOn(Row::excluded).extracting(Row::flag).containsExactly("out");
        assertThat(day.rows().get(3).name()).isEqualTo("timing 32°-1");
        assertThat(day.rows().get(3).order()).isEqualTo(1);
    }

    @Test
    void aPullIsExcludedWithAReasonAndCountedAgain() {
        SessionViewModel filled = SheetFixture.model(DynoFixture.open(), DynoFixture::appraise);
        DynoDayViewModel day = DynoPictures.model(filled, acts);

        day.exclude(day.rows().get(0).pull(), "wheels slipped");
        assertThat(day.rows().get(0).pull().pull().excluded()).contains("wheels slipped");
        day.include(day.rows().get(0).pull());

        assertThat(day.rows().get(0).excluded()).isFalse();
    }

    @Test
    void aPullIsNotExcludedWithoutAReason() {
        DynoDayViewModel day = DynoPictures.model(SheetFixture.model(DynoFixture.open(), DynoFixture::appraise), acts);

        assertThatThrownBy(() -> day.exclude(day.rows().get(0).pull(), "  "))
                .hasMessage("Say why base-1 does not count.");
    }

    @Test
    void theTableCopiedHasALineForEachPull() {
        DynoDayViewModel day = DynoPictures.model(SheetFixture.model(DynoFixture.open(), DynoFixture::appraise), acts);

        assertThat(day.table().lines()).hasSize(12).anyMatch(line -> line.endsWith("belt slipped"));
    }

    @Test
    void filesAreTakenInForTheSetupTheEngineIsInNow() {
        assertThat(model.setupProperty().get()).isEqualTo("as found");

        Setup next = Setup.named("timing-32", "timing 32");
        session.act(open -> UiFixture.after(
                open, new Edit("Change", now -> now.withSetups(List.of(now.present(), next), "timing-32", List.of()))));

        assertThat(model.setupProperty().get()).isEqualTo("timing 32");
    }
}
