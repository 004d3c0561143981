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

    private List<String> problems(String pressure, String temperature, String humidity, String elevation) {
        Optional<Quantity> place = Optional.of(elevation)
                .filter(text -> !text.isEmpty())
                .map(text -> Quantity.parse(text, Dimension.LENGTH));
        return check.problems(Readings.air(pressure, temperature, humidity).air(), place);
    }
}
