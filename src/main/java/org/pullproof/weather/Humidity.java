package org.pullproof.weather;

import org.pullproof.units.Dimension;
import org.pullproof.units.Pressure;
import org.pullproof.units.Quantity;
import org.pullproof.units.Temperature;

/** How the moisture was read, as typed; what counts is the vapour pressure of the air taken in. */
public sealed interface Humidity {
    /**
     * The vapour pressure at one end of what the reading leaves open.
     *
     * @param total station pressure; only a wet bulb needs it
     * @param air temperature of the air
     */
    Pressure vapour(Pressure total, Temperature air, Side reading);

    default Pressure vapour(Pressure total, Temperature air) {
        return vapour(total, air, Side.READ);
    }

    /** The reading in words: "dew point 9.5 °C". */
    String words();

    /**
     * Relative humidity at the intake.
     *
     * @param share over water, 0 to 100 %
     */
    record Relative(Quantity share) implements Humidity {
        public Relative {
            share.requireDimension(Dimension.SHARE);
        }

        @Override
        public Pressure vapour(Pressure total, Temperature air, Side reading) {
            double share = Math.max(0, reading.si(this.share));
            return new Pressure(share * MoistAir.saturation(air).pascal());
        }

        @Override
        public String words() {
            return "humidity " + share;
        }
    }

    /**
     * Dew point. It tells the vapour pressure itself, wherever it was read.
     *
     * @param temperature at which this air would be saturated over water
     */
    record DewPoint(Quantity temperature) implements Humidity {
        public DewPoint {
            temperature.requireDimension(Dimension.TEMPERATURE);
        }

        @Override
        public Pressure vapour(Pressure total, Temperature air, Side reading) {
            return MoistAir.saturation(new Temperature(reading.si(temperature)));
        }

        @Override
        public String words() {
            return "dew point " + temperature;
        }
    }

    /**
     * Wet bulb of an aspirated psychrometer at the intake.
     *
     * @param temperature of the wet bulb, never above that of the air
     */
    record WetBulb(Quantity temperature) implements Humidity {
        public WetBulb {
            temperature.requireDimension(Dimension.TEMPERATURE);
        }

        @Override
        public Pressure vapour(Pressure total, Temperature air, Side reading) {
            double wet = Math.min(reading.si(temperature), air.kelvin());
            double vapour = Psychrometer.vapourPascal(total, air, new Temperature(wet));
            return new Pressure(Math.max(0, vapour));
        }

        @Override
        public String words() {
            return "wet bulb " + temperature;
        }
    }

    /**
     * Nobody read the moisture. Air that people drive in has {@value #DRIEST} to {@value #DAMPEST} of its saturation (C, common
     * practice without a source); the middle is used and the whole range is uncertainty, so that a missing reading never
     * becomes dry air.
     */
    record Unknown() implements Humidity {
        static final double DRIEST = 0.2;
        static final double DAMPEST = 0.9;

        @Override
        public Pressure vapour(Pressure total, Temperature air, Side reading) {
            double share = reading.of((DRIEST + DAMPEST) / 2, (DAMPEST - DRIEST) / 2);
            return new Pressure(share * MoistAir.saturation(air).pascal());
        }

        @Override
        public String words() {
            return "humidity not known, 20 to 90 %";
        }
    }

    /**
     * The dew point of a METAR: taken as vapour pressure, which is the same indoors, and never as its relative humidity, which
     * is not.
     *
     * @param report with a dew point
     */
    record Report(Metar report) implements Humidity {
        public Report {
            if (report.dewPoint().isEmpty()) {
                throw new IllegalArgumentException(
                        "The METAR has no dew point: type a humidity, a dew point or a wet bulb"
                                + " with it, or say that none is known.");
            }
        }

        @Override
        public Pressure vapour(Pressure total, Temperature air, Side reading) {
            return MoistAir.saturation(
                    new Temperature(reading.si(report.dewPoint().orElseThrow())));
        }

        @Override
        public String words() {
            return "dew point " + report.dewPoint().orElseThrow() + " of the METAR";
        }
    }
}
