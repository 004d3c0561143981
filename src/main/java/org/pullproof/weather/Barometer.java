package org.pullproof.weather;

import java.util.Optional;
import org.pullproof.units.Dimension;
import org.pullproof.units.Pressure;
import org.pullproof.units.Quantity;

/**
 * Which pressure was read, as typed. Whatever the form, the pressure that counts is that of the air at the place where the
 * engine breathes.
 */
public sealed interface Barometer {
    /** The station pressure, with the reading and the elevation each at one end of its step. */
    Pressure station(Side reading, Side height);

    /** The station pressure that follows from what was read. */
    default Pressure station() {
        return station(Side.READ, Side.READ);
    }

    /** Elevation of the place where the engine breathes, if it was told with the pressure. */
    Optional<Quantity> elevation();

    /** The reading in words: "station pressure 98.6 kPa". */
    String words();

    /**
     * The pressure of the air at the place itself.
     *
     * @param pressure absolute
     * @param elevation of the place, if told; it changes nothing and is there to hold the pressure against
     */
    record Station(Quantity pressure, Optional<Quantity> elevation) implements Barometer {
        public Station {
            pressure.requireDimension(Dimension.PRESSURE);
            elevation.ifPresent(length -> length.requireDimension(Dimension.LENGTH));
        }

        public Station(Quantity pressure) {
            this(pressure, Optional.empty());
        }

        @Override
        public Pressure station(Side reading, Side height) {
            return new Pressure(reading.si(pressure));
        }

        @Override
        public String words() {
            return "station pressure " + pressure;
        }
    }

    /**
     * A station pressure read at another height, such as that of an airfield's own barometer, carried along the standard
     * atmosphere: the altimeter setting is the same at both places.
     *
     * @param pressure absolute, at the place where it was read
     * @param readAt elevation of that place
     * @param here elevation of the place where the engine breathes
     */
    record Elsewhere(Quantity pressure, Quantity readAt, Quantity here) implements Barometer {
        public Elsewhere {
            pressure.requireDimension(Dimension.PRESSURE);
            readAt.requireDimension(Dimension.LENGTH);
            here.requireDimension(Dimension.LENGTH);
        }

        @Override
        public Pressure station(Side reading, Side height) {
            return StandardAtmosphere.station(new Pressure(reading.si(pressure)), height.si(here) - readAt.si());
        }

        @Override
        public Optional<Quantity> elevation() {
            return Optional.of(here);
        }

        @Override
        public String words() {
            return "station pressure " + pressure + " read at " + readAt + ", used at " + here;
        }
    }

    /**
     * An altimeter setting (QNH), as an airfield gives it: exact by {@link StandardAtmosphere#station}.
     *
     * @param setting reduced to sea level by the standard atmosphere
     * @param here elevation of the place where the engine breathes, not of the airfield
     */
    record Altimeter(Quantity setting, Quantity here) implements Barometer {
        public Altimeter {
            setting.requireDimension(Dimension.PRESSURE);
            here.requireDimension(Dimension.LENGTH);
        }

        @Override
        public Pressure station(Side reading, Side height) {
            return StandardAtmosphere.station(new Pressure(reading.si(setting)), height.si(here));
        }

        @Override
        public Optional<Quantity> elevation() {
            return Optional.of(here);
        }

        @Override
        public String words() {
            return "altimeter setting " + setting + " at " + here;
        }
    }

    /**
     * A sea-level pressure of a weather map or forecast. It was reduced with the real temperature of half a day (FMH-1 1995,
     * 11.4.4) and cannot be turned back exactly: the standard atmosphere is used, and a column of air
     * {@value #COLUMN_KELVIN} K warmer or colder widens it (C, common practice without a source).
     *
     * @param pressure reduced to sea level
     * @param here elevation of the place where the engine breathes
     */
    record SeaLevel(Quantity pressure, Quantity here) implements Barometer {
        private static final double COLUMN_KELVIN = 20;

        public SeaLevel {
            pressure.requireDimension(Dimension.PRESSURE);
            here.requireDimension(Dimension.LENGTH);
        }

        @Override
        public Pressure station(Side reading, Side height) {
            double metres = height.si(here);
            double station = StandardAtmosphere.station(new Pressure(reading.si(pressure)), metres)
                    .pascal();
            return new Pressure(reading.of(
                    station, station * StandardAtmosphere.relativeChangeOfColumn(Math.abs(metres), COLUMN_KELVIN)));
        }

        @Override
        public Optional<Quantity> elevation() {
            return Optional.of(here);
        }

        @Override
        public String words() {
            return "sea-level pressure " + pressure + " at " + here;
        }
    }

    /**
     * The altimeter setting of a METAR. The groups are rounded down (FMH-1 1995, 11.5.1; WMO No. 306, 15.12), so the setting
     * lies in the middle of the step above the figure printed, half a step to either side.
     *
     * @param report with an A or Q group
     * @param here elevation of the place where the engine breathes, not of the airfield
     */
    record Report(Metar report, Quantity here) implements Barometer {
        public Report {
            here.requireDimension(Dimension.LENGTH);
            if (report.altimeter().isEmpty()) {
                throw new IllegalArgumentException("The METAR has no pressure (A or Q group)"
                        + report.seaLevelPressure()
                                .map(sea -> "; it has a sea-level pressure of " + sea + ", which can be typed as such.")
                                .orElse(": type a pressure by itself, with the other readings."));
            }
        }

        @Override
        public Pressure station(Side reading, Side height) {
            Quantity printed = report.altimeter().orElseThrow();
            double half = printed.halfStepSi();
            return StandardAtmosphere.station(new Pressure(reading.of(printed.si() + half, half)), height.si(here));
        }

        @Override
        public Optional<Quantity> elevation() {
            return Optional.of(here);
        }

        @Override
        public String words() {
            return "METAR, altimeter setting " + report.altimeter().orElseThrow() + " at " + here;
        }
    }
}
