package org.pullproof.weather;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.pullproof.units.Pressure;
import org.pullproof.units.Quantity;
import org.pullproof.units.Temperature;

/**
 * The air as typed, by whichever instrument: what it is, and how far the readings leave that open. Immutable.
 *
 * @param barometer which pressure was read
 * @param thermometer where the temperature of the air taken in comes from
 * @param humidity how the moisture was read
 */
public record TypedAir(Barometer barometer, Thermometer thermometer, Humidity humidity) {
    public TypedAir {
        if (reports(barometer, thermometer, humidity).distinct().count() > 1) {
            throw new IllegalArgumentException("The air is read from two METARs; it is read from one");
        }
    }

    /** Air with its temperature read at the intake. */
    public TypedAir(Barometer barometer, Quantity temperature, Humidity humidity) {
        this(barometer, new Thermometer.Intake(temperature), humidity);
    }

    /** The METAR that some of it comes from. */
    public Optional<Metar> report() {
        return reports(barometer, thermometer, humidity).findFirst();
    }

    private static Stream<Metar> reports(Barometer barometer, Thermometer thermometer, Humidity humidity) {
        return Stream.of(
                        barometer instanceof Barometer.Report told
                                ? Optional.of(told.report())
                                : Optional.<Metar>empty(),
                        thermometer instanceof Thermometer.Report told
                                ? Optional.of(told.report())
                                : Optional.<Metar>empty(),
                        humidity instanceof Humidity.Report told ? Optional.of(told.report()) : Optional.<Metar>empty())
                .flatMap(Optional::stream);
    }

    /**
     * @throws IllegalArgumentException if there is no such air, see {@link AirCheck} for sentences
     */
    public AirState state() {
        return state(Side.READ, Side.READ, Side.READ, Side.READ);
    }

    private AirState state(Side pressure, Side height, Side temperature, Side moisture) {
        Pressure total = barometer.station(pressure, height);
        Temperature air = thermometer.temperature(temperature);
        return new AirState(total, humidity.vapour(total, air, moisture), air);
    }

    /**
     * What each reading leaves open of a figure of this air (O): the figure with that reading at either end of its step and the
     * others as read, half the difference. Parts that change nothing are left out.
     */
    public List<AirPart.Width> widths(ToDoubleFunction<AirState> figure) {
        return Stream.of(AirPart.values())
                .map(part -> new AirPart.Width(part, halfWidth(part, figure)))
                .filter(width -> width.halfWidth() > 0)
                .toList();
    }

    private double halfWidth(AirPart part, ToDoubleFunction<AirState> figure) {
        return Math.abs(figure.applyAsDouble(state(part, Side.HIGH)) - figure.applyAsDouble(state(part, Side.LOW))) / 2;
    }

    private AirState state(AirPart moved, Side side) {
        return switch (moved) {
            case PRESSURE -> state(side, Side.READ, Side.READ, Side.READ);
            case ELEVATION -> state(Side.READ, side, Side.READ, Side.READ);
            case TEMPERATURE -> state(Side.READ, Side.READ, side, Side.READ);
            case MOISTURE -> state(Side.READ, Side.READ, Side.READ, side);
        };
    }

    /** The readings in words: "station pressure 98.6 kPa, 27 °C, humidity 55 %". */
    public String words() {
        return barometer.words() + ", " + thermometer.words() + ", " + humidity.words();
    }
}
