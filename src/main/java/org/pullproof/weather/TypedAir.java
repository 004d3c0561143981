package org.pullproof.weather;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.pullproof.units.Dimension;
import org.pullproof.units.Pressure;
import org.pullproof.units.Quantity;
import org.pullproof.units.Temperature;

/**
 * The air as typed, by whichever instrument: what it is, and how far the digits typed leave that open. Immutable.
 *
 * @param barometer which pressure was read
 * @param temperature of the air the engine takes in
 * @param humidity how the moisture was read
 */
public record TypedAir(Barometer barometer, Quantity temperature, Humidity humidity) {
    public TypedAir {
        temperature.requireDimension(Dimension.TEMPERATURE);
    }

    public static TypedAir of(AirReading reading) {
        return new TypedAir(
                new Barometer.Station(reading.stationPressure()),
                reading.temperature(),
                new Humidity.Relative(reading.relativeHumidity()));
    }

    /**
     * @throws IllegalArgumentException if there is no such air, see {@link AirCheck} for sentences
     */
    public AirState state() {
        Temperature t = temperature.temperature();
        return new AirState(barometer.station(), humidity.vapour(t), t);
    }

    /** The half width of a figure of this air: root of the sum of squares of its changes by each half step. */
    double halfWidth(ToDoubleFunction<AirState> figure) {
        return Math.sqrt(neighbours().stream()
                .mapToDouble(pair -> pair.difference(figure) / 2)
                .map(half -> half * half)
                .sum());
    }

    /** The air with one reading at either end of its step, the others as typed. */
    private List<Pair> neighbours() {
        return Stream.of(
                        new Pair(
                                new TypedAir(barometer.moved(-1), temperature, humidity),
                                new TypedAir(barometer.moved(1), temperature, humidity)),
                        new Pair(
                                new TypedAir(barometer, moved(temperature, -1), humidity),
                                new TypedAir(barometer, moved(temperature, 1), humidity)),
                        new Pair(
                                new TypedAir(barometer, temperature, humidity.moved(-1)),
                                new TypedAir(barometer, temperature, humidity.moved(1))))
                .toList();
    }

    private record Pair(TypedAir low, TypedAir high) {
        double difference(ToDoubleFunction<AirState> figure) {
            return figure.applyAsDouble(high.state()) - figure.applyAsDouble(low.state());
        }
    }

    /** The quantity moved by half a step of its last digit. */
    static Quantity moved(Quantity typed, int direction) {
        double half = 0.5 * Math.pow(10, -typed.figure().scale());
        return Quantity.of(typed.figure().doubleValue() + direction * half, typed.unit());
    }

    /** Which pressure was read. */
    public sealed interface Barometer {
        /** The station pressure that follows. */
        Pressure station();

        /** The same with the reading moved by half a step. */
        Barometer moved(int direction);

        /**
         * The pressure of the air at the place itself.
         *
         * @param pressure absolute
         */
        record Station(Quantity pressure) implements Barometer {
            public Station {
                pressure.requireDimension(Dimension.PRESSURE);
            }

            @Override
            public Pressure station() {
                return pressure.pressure();
            }

            @Override
            public Barometer moved(int direction) {
                return new Station(TypedAir.moved(pressure, direction));
            }
        }

        /**
         * An altimeter setting, as an airfield gives it.
         *
         * @param setting reduced to sea level
         * @param elevation of the place, taken as exact
         */
        record Altimeter(Quantity setting, Quantity elevation) implements Barometer {
            public Altimeter {
                setting.requireDimension(Dimension.PRESSURE);
                elevation.requireDimension(Dimension.LENGTH);
            }

            @Override
            public Pressure station() {
                return StandardAtmosphere.station(setting.pressure(), elevation.si());
            }

            @Override
            public Barometer moved(int direction) {
                return new Altimeter(TypedAir.moved(setting, direction), elevation);
            }
        }
    }

    /** How the moisture was read. */
    public sealed interface Humidity {
        /** The vapour pressure that follows in air of that temperature. */
        Pressure vapour(Temperature air);

        /** The same with the reading moved by half a step, but not out of what exists. */
        Humidity moved(int direction);

        /**
         * @param share relative humidity over water, 0 to 100 %
         */
        record Relative(Quantity share) implements Humidity {
            public Relative {
                share.requireDimension(Dimension.SHARE);
            }

            @Override
            public Pressure vapour(Temperature air) {
                return new Pressure(
                        Math.max(0, share.si()) * MoistAir.saturation(air).pascal());
            }

            @Override
            public Humidity moved(int direction) {
                return new Relative(TypedAir.moved(share, direction));
            }
        }

        /**
         * @param temperature at which this air would be saturated over water
         */
        record DewPoint(Quantity temperature) implements Humidity {
            public DewPoint {
                temperature.requireDimension(Dimension.TEMPERATURE);
            }

            @Override
            public Pressure vapour(Temperature air) {
                return MoistAir.saturation(temperature.temperature());
            }

            @Override
            public Humidity moved(int direction) {
                return new DewPoint(TypedAir.moved(temperature, direction));
            }
        }
    }
}
