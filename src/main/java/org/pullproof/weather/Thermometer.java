package org.pullproof.weather;

import org.pullproof.units.Dimension;
import org.pullproof.units.Quantity;
import org.pullproof.units.Temperature;

/** Where the temperature of the air the engine takes in comes from. */
public sealed interface Thermometer {
    /** The temperature at one end of what the reading leaves open. */
    Temperature temperature(Side reading);

    default Temperature temperature() {
        return temperature(Side.READ);
    }

    /** The reading in words: "27 °C". */
    String words();

    /**
     * Read at the intake.
     *
     * @param read the temperature
     */
    record Intake(Quantity read) implements Thermometer {
        public Intake {
            read.requireDimension(Dimension.TEMPERATURE);
        }

        @Override
        public Temperature temperature(Side reading) {
            return new Temperature(reading.si(read));
        }

        @Override
        public String words() {
            return read.toString();
        }
    }

    /**
     * That of a METAR, because nobody read one at the intake. The air in a hall or under a hood is not that of an airfield: the
     * temperature is widened by {@value #UNREAD_KELVIN} K to either side (C, common practice without a source).
     *
     * @param report with a temperature
     */
    record Report(Metar report) implements Thermometer {
        private static final double UNREAD_KELVIN = 5;

        public Report {
            if (report.temperature().isEmpty()) {
                throw new IllegalArgumentException(
                        "The METAR has no temperature: read it at the intake and type it with the report.");
            }
        }

        @Override
        public Temperature temperature(Side reading) {
            Quantity printed = report.temperature().orElseThrow();
            return new Temperature(reading.of(printed.si(), printed.halfStepSi() + UNREAD_KELVIN));
        }

        @Override
        public String words() {
            return report.temperature().orElseThrow() + " of the METAR, not read at the intake, ± "
                    + Math.round(UNREAD_KELVIN) + " °C";
        }
    }
}
