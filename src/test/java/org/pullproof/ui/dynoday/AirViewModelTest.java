package org.pullproof.ui.dynoday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.car.Fact;
import org.pullproof.session.Edit;
import org.pullproof.ui.DynoFixture;
import org.pullproof.ui.SheetFixture;
import org.pullproof.ui.UiFixture;
import org.pullproof.ui.dynoday.AirEntry.Part;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.units.Figures;
import org.pullproof.units.UnitSystem;

class AirViewModelTest {
    private static final Figures US = new Figures(UnitSystem.US);

    private final SessionViewModel session = SheetFixture.model(UiFixture.open(), DynoFixture::appraise);
    private final AirViewModel model = air(session);

    private static AirViewModel air(SessionViewModel session) {
        return DynoPictures.model(session, new DynoPictures.Acts()).air();
    }

    private void garageLiesAt(String elevation) {
        session.act(open -> UiFixture.after(
                open, new Edit("Set", now -> now.withCar(now.car().with(Fact.ELEVATION, elevation)))));
    }

    private void typeAir(String pressure, String temperature, String humidity) {
        model.entry().take(Part.PRESSURE, pressure, US);
        model.entry().take(Part.TEMPERATURE, temperature, US);
        model.entry().take(Part.HUMIDITY, humidity, US);
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
        model.entry().take(Part.PRESSURE, "29.1", US);
        model.entry().take(Part.TEMPERATURE, "80", US);

        assertThat(model.factorWords()).isEqualTo("–");
        assertThat(model.entry().waitsFor()).contains("Waits for the humidity.");
    }

    @ParameterizedTest
    @CsvSource({
        "PRESSURE, 2.9, station pressure",
        "TEMPERATURE, 400, temperature",
        "HUMIDITY, 140, humidity",
        "PRESSURE, 80F, pressure"
    })
    void anImpossiblePartIsRefusedInItsOwnWords(Part part, String typed, String words) {
        assertThatThrownBy(() -> model.entry().take(part, typed, US)).hasMessageContaining(words);
    }

    /** A garage at 5,250 ft with 30.02 inHg: the example of the error sheet. */
    @Test
    void anAltimeterSettingIsRefusedAtAHighGarageWithAWayOut() {
        garageLiesAt("5250ft");

        assertThatThrownBy(() -> model.entry().take(Part.PRESSURE, "30.02", US))
                .hasMessageContaining("looks like an altimeter setting");
        assertThat(model.entry().lookalike())
                .hasValueSatisfying(
                        likeness -> assertThat(likeness.stationWords()).isEqualTo("24.75 inHg"));
    }

    @Test
    void aRefusedPressureDoesNotStandForTheOldOne() {
        typeAir("29.1", "80", "40");
        assertThatThrownBy(() -> model.entry().take(Part.PRESSURE, "291", US)).hasMessageContaining("station pressure");

        assertThat(model.factorWords()).isEqualTo("–");
    }

    @Test
    void usedAirBecomesTheReadingOfThisMinute() {
        typeAir("29.1", "80", "40");

        model.use();

        assertThat(model.latest()).hasValueSatisfying(reading -> {
            assertThat(reading.time()).isEqualTo("2026-06-14T14:02");
            assertThat(reading.air().barometer().words()).isEqualTo("station pressure 29.1 inHg");
        });
    }

    @Test
    void airOlderThanTwentyMinutesIsToBeReadAgain() {
        AirViewModel day = air(SheetFixture.model(DynoFixture.open(), DynoFixture::appraise));

        assertThat(day.age()).isEqualTo("typed 13:40, 22\u00a0min ago");
        assertThat(day.isOld()).isTrue();
    }
}
