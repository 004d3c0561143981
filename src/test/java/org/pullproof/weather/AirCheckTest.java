package org.pullproof.weather;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.units.Dimension;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;

class AirCheckTest {
    private final AirCheck check = new AirCheck();

    @ParameterizedTest
    @CsvSource({
        "-98.2kPa, 30C, 60%, -98.2 kPa is not a station pressure: it lies between 50.0 kPa and 110.0 kPa.",
        "14.7inHg, 30C, 60%, 14.7 inHg is not a station pressure: it lies between 14.76 inHg and 32.48 inHg.",
        "98.2kPa, 30C, 140%, 140 % is not a relative humidity: it lies between 0 % and 100 %.",
        "98.2kPa, 30C, -5%, -5 % is not a relative humidity: it lies between 0 % and 100 %.",
    })
    void whatCannotBeIsNamed(String pressure, String temperature, String humidity, String sentence) {
        assertThat(problems(pressure, temperature, humidity, "")).containsExactly(sentence);
    }

    @Test
    void aTemperatureNoIntakeHasIsNamed() {
        assertThat(problems("98.2kPa", "300C", "60%", ""))
                .singleElement()
                .asString()
                .startsWith("300 °C is not a temperature of intake air");
    }

    @Test
    void vapourAboveTheTotalIsNamed() {
        assertThat(problems("60kPa", "90C", "100%", ""))
                .singleElement()
                .asString()
                .startsWith("The vapour alone would have 70.1 kPa, more than the whole 60.0 kPa");
    }

    @Test
    void everyProblemIsNamedAtOnce() {
        assertThat(problems("-1kPa", "300C", "140%", "")).hasSize(3);
    }

    /**
     * A garage at 600 m with 101.3 kPa typed. ISO 2533: 94.3 kPa is usual there, and an altimeter setting of 101.3 kPa is
     * 94.3 kPa.
     */
    @Test
    void aSeaLevelPressureInTheHillsLooksLikeAnAltimeterSetting() {
        assertThat(problems("101.3kPa", "30C", "60%", "600m"))
                .containsExactly("101.3 kPa at 600 m looks like an altimeter setting:"
                        + " the station pressure there would be 94.3 kPa.");
    }

    @Test
    void aPressureThatIsNeitherIsRefusedWithItsRange() {
        assertThat(problems("80.0kPa", "30C", "60%", "0m"))
                .containsExactly("80.0 kPa cannot be the station pressure at 0 m:"
                        + " it lies between 97.3 kPa and 105.3 kPa there.");
    }

    @Test
    void theAirOfAnOrdinaryDayIsAccepted() {
        assertThat(problems("94.1kPa", "30C", "60%", "600m")).isEmpty();
    }

    @Test
    void withoutElevationAPressureIsNotHeldAgainstThePlace() {
        assertThat(problems("101.3kPa", "30C", "60%", "")).isEmpty();
    }

    @Test
    void aDewPointAboveTheTemperatureIsNamed() {
        TypedAir air = new TypedAir(
                new Barometer.Station(Quantity.of("98.2", Unit.KPA)),
                Quantity.of("20", Unit.CELSIUS),
                new Humidity.DewPoint(Quantity.of("25", Unit.CELSIUS)));
        assertThat(check.problems(air, Optional.empty()))
                .singleElement()
                .asString()
                .startsWith("The dew point 25 °C is above the temperature of the air, 20 °C");
    }

    @Test
    void aDewPointOfAReportAboveTheIntakeTemperatureIsNamed() {
        Metar report = Metar.parse("XXXX 121151Z 28/23 A2992");
        TypedAir air = new TypedAir(station("98.2"), Quantity.of("20", Unit.CELSIUS), new Humidity.Report(report));
        assertThat(check.problems(air, Optional.empty()))
                .singleElement()
                .asString()
                .startsWith("The dew point 23 °C is above the temperature of the air, 20 °C");
    }

    @Test
    void aWetBulbAboveTheTemperatureIsNamed() {
        assertThat(wetBulb("20", "25"))
                .containsExactly("The wet bulb 25 °C is above the temperature of the air, 20 °C:"
                        + " a wet wick is never warmer than the air.");
    }

    /** In dry air of 40 °C at 101.3 kPa a wick has about 14 °C (psychrometric chart, from memory: 13.6 at 0 %). */
    @Test
    void aWetBulbColderThanDryAirMakesItIsNamed() {
        assertThat(wetBulb("40", "5"))
                .singleElement()
                .asString()
                .startsWith("The wet bulb 5 °C is too cold for air of 40 °C: even in dry air it would show 1");
    }

    @Test
    void aWetBulbAtTheTemperatureIsSaturatedAir() {
        assertThat(wetBulb("20", "20")).isEmpty();
    }

    /** At 800 ft ISO 2533 has 98.4 kPa: 101.5 is possible there, but as a setting it is 98.6 and lies nearer. */
    @Test
    void aPressureThatCouldBeEitherIsDoubtedAndNotRefused() {
        assertThat(problems("101.5kPa", "30C", "60%", "800ft")).isEmpty();
        assertThat(doubts("101.5kPa", "800ft"))
                .containsExactly("101.5 kPa at 800 ft lies nearer to an altimeter setting than to a station pressure:"
                        + " taken as a setting, the station pressure is 98.6 kPa.");
    }

    @ParameterizedTest
    @CsvSource({"98.6kPa, 800ft", "97.0kPa, 800ft", "101.9kPa, 90m", "102.5kPa, 0m", "101.5kPa, ''"})
    void anOrdinaryStationPressureIsNotDoubted(String pressure, String elevation) {
        assertThat(doubts(pressure, elevation)).isEmpty();
    }

    /** What was told with the pressure itself comes before the garage: the dyno may stand elsewhere. */
    @Test
    void theElevationToldWithThePressureComesFirst() {
        TypedAir air = new TypedAir(
                new Barometer.Station(Quantity.of("101.3", Unit.KPA), Optional.of(Quantity.of("20", Unit.M))),
                Quantity.of("20", Unit.CELSIUS),
                new Humidity.Unknown());
        assertThat(check.problems(air, Optional.of(Quantity.of("600", Unit.M)))).isEmpty();
    }

    /** The other way round: 94.3 kPa, a station pressure of 600 m, typed as altimeter setting there. */
    @Test
    void aStationPressureTypedAsSettingIsRefused() {
        Barometer setting = new Barometer.Altimeter(Quantity.of("94.3", Unit.KPA), Quantity.of("600", Unit.M));
        TypedAir air = new TypedAir(setting, Quantity.of("20", Unit.CELSIUS), new Humidity.Unknown());
        assertThat(check.problems(air, Optional.empty()))
                .singleElement()
                .asString()
                .contains("check the elevation, and whether the pressure is a station pressure already");
    }

    private List<String> wetBulb(String celsius, String wet) {
        TypedAir air = new TypedAir(
                station("101.3"),
                Quantity.of(celsius, Unit.CELSIUS),
                new Humidity.WetBulb(Quantity.of(wet, Unit.CELSIUS)));
        return check.problems(air, Optional.empty());
    }

    private static Barometer station(String kPa) {
        return new Barometer.Station(Quantity.of(kPa, Unit.KPA));
    }

    private List<String> doubts(String pressure, String elevation) {
        return check.doubts(Readings.air(pressure, "30C", "60%").air(), place(elevation));
    }

    private static Optional<Quantity> place(String elevation) {
        return Optional.of(elevation)
                .filter(text -> !text.isEmpty())
                .map(text -> Quantity.parse(text, Dimension.LENGTH));
    }

    private List<String> problems(String pressure, String temperature, String humidity, String elevation) {
        return check.problems(Readings.air(pressure, temperature, humidity).air(), place(elevation));
    }
}
