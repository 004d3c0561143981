package org.pullproof.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.pullproof.units.Dimension;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;

class TypedAirTest {
    private static final Barometer STATION = new Barometer.Station(Quantity.of("98.2", Unit.KPA));
    private static final Metar REPORT = Metar.parse("XXXX 141255Z 25/10 A3002");

    /** 40 CFR 1065.645, worked example: dew point 9.5 °C at 99.980 kPa is 0.011868 mol/mol, and so is 50.77 % at 20 °C. */
    @ParameterizedTest
    @MethodSource("federalExample")
    void bothReadingsOfTheFederalExampleGiveItsVapour(Humidity humidity) {
        TypedAir air = new TypedAir(new Barometer.Station(Quantity.of("99.980", Unit.KPA)), celsius("20"), humidity);
        AirState state = air.state();
        assertThat(state.vapour().pascal() / state.pressure().pascal()).isCloseTo(0.011868, within(0.0000005));
    }

    static Humidity[] federalExample() {
        return new Humidity[] {
            new Humidity.DewPoint(celsius("9.5")), new Humidity.Relative(Quantity.of("50.77", Unit.PERCENT))
        };
    }

    /** A dew point tells vapour, so in warmer air it is a lower humidity: 9.5 °C in air of 20 °C is 50.77 %, as above. */
    @Test
    void aDewPointIsConvertedAtTheTemperatureOfTheIntake() {
        TypedAir air = new TypedAir(STATION, celsius("20"), new Humidity.DewPoint(celsius("9.5")));
        assertThat(MoistAir.relativeHumidity(air.state())).isCloseTo(0.5077, within(0.00005));
        TypedAir warmer = new TypedAir(STATION, celsius("30"), new Humidity.DewPoint(celsius("9.5")));
        assertThat(warmer.state().vapour()).isEqualTo(air.state().vapour());
    }

    /** A report's moisture is its vapour pressure: 1.2280 kPa at a dew point of 10 °C (IAPWS, rounded), whatever the intake has. */
    @ParameterizedTest
    @ValueSource(strings = {"15", "25", "40"})
    void theMoistureOfAReportIsItsVapourAtAnyIntakeTemperature(String intake) {
        TypedAir air = new TypedAir(STATION, celsius(intake), new Humidity.Report(REPORT));
        assertThat(air.state().vapour().kilopascal()).isCloseTo(1.2280, within(0.0015));
    }

    @Test
    void withNoMoistureKnownTheMiddleStandsAndTheRangeIsUncertainty() {
        TypedAir air = new TypedAir(STATION, celsius("30"), new Humidity.Unknown());
        assertThat(MoistAir.relativeHumidity(air.state())).isCloseTo(0.55, within(1e-9));
        assertThat(width(air, AirPart.MOISTURE, MoistAir::relativeHumidity)).isCloseTo(0.35, within(1e-9));
    }

    @Test
    void theTemperatureOfAReportIsWidenedByFiveDegrees() {
        TypedAir air = new TypedAir(STATION, new Thermometer.Report(REPORT), new Humidity.Unknown());
        assertThat(width(air, AirPart.TEMPERATURE, state -> state.temperature().kelvin()))
                .isCloseTo(5.5, within(1e-9));
    }

    /** FMH-1 12.7.2.d: tenths in the remarks, so half a tenth either way. */
    @Test
    void tenthsOfAReportAreTenTimesAsExact() {
        Metar tenths = Metar.parse("XXXX 141255Z 25/10 A3002 RMK T02530098");
        TypedAir air = new TypedAir(STATION, new Thermometer.Report(tenths), new Humidity.Report(tenths));
        assertThat(width(air, AirPart.TEMPERATURE, state -> state.temperature().kelvin()))
                .isCloseTo(5.05, within(1e-9));
        assertThat(width(
                        air,
                        AirPart.MOISTURE,
                        state -> MoistAir.dewPoint(state.vapour()).orElseThrow().kelvin()))
                .isCloseTo(0.05, within(1e-5));
    }

    @Test
    void aStationPressureHasNoPartOfTheElevation() {
        TypedAir air = new TypedAir(STATION, celsius("30"), new Humidity.Unknown());
        assertThat(air.widths(state -> state.pressure().pascal()))
                .extracting(AirPart.Width::part)
                .containsExactly(AirPart.PRESSURE);
    }

    @Test
    void theReadingsOfOneAirComeFromOneReport() {
        Metar other = Metar.parse("XXXX 141355Z 26/10 A3001");
        assertThatThrownBy(() -> new TypedAir(STATION, new Thermometer.Report(REPORT), new Humidity.Report(other)))
                .hasMessage("The air is read from two METARs; it is read from one");
    }

    /** The same air told by humidity, dew point and wet bulb: three roads to one vapour pressure. */
    @ParameterizedTest
    @MethodSource("seeds")
    void humidityDewPointAndWetBulbOfOneAirGiveOneVapour(double seed) {
        Random random = new Random((long) seed);
        Quantity temperature = Quantity.of(5 + 40 * random.nextDouble(), Unit.CELSIUS);
        Barometer barometer = new Barometer.Station(Quantity.of(80 + 25 * random.nextDouble(), Unit.KPA));
        Humidity share = new Humidity.Relative(Quantity.of(30 + 65 * random.nextDouble(), Unit.PERCENT));
        AirState state = new TypedAir(barometer, temperature, share).state();
        Quantity dew = kelvin(MoistAir.dewPoint(state.vapour()).orElseThrow().kelvin());
        Quantity wet = kelvin(Psychrometer.wetBulb(state).kelvin());
        double vapour = state.vapour().pascal();
        assertThat(vapour(barometer, temperature, new Humidity.DewPoint(dew))).isCloseTo(vapour, within(0.01));
        assertThat(vapour(barometer, temperature, new Humidity.WetBulb(wet))).isCloseTo(vapour, within(0.01));
    }

    static DoubleStream seeds() {
        return DoubleStream.iterate(1, seed -> seed + 1).limit(40);
    }

    private static double vapour(Barometer barometer, Quantity temperature, Humidity humidity) {
        return new TypedAir(barometer, temperature, humidity).state().vapour().pascal();
    }

    private static double width(TypedAir air, AirPart part, java.util.function.ToDoubleFunction<AirState> figure) {
        return air.widths(figure).stream()
                .filter(width -> width.part() == part)
                .mapToDouble(AirPart.Width::halfWidth)
                .sum();
    }

    private static Quantity kelvin(double value) {
        return Quantity.of(value, Unit.KELVIN);
    }

    private static Quantity celsius(String text) {
        return Quantity.parse(text + "C", Dimension.TEMPERATURE);
    }
}
