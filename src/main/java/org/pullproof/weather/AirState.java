package org.pullproof.weather;

import org.pullproof.units.Figures;
import org.pullproof.units.Pressure;
import org.pullproof.units.Shown;
import org.pullproof.units.Temperature;

/**
 * The state of moist air.
 *
 * @param pressure total (station) pressure
 * @param vapour partial pressure of the water vapour, less than the total
 * @param temperature of the air
 */
public record AirState(Pressure pressure, Pressure vapour, Temperature temperature) {
    public AirState {
        if (!(vapour.pascal() < pressure.pascal())) {
            throw new IllegalArgumentException("The vapour pressure " + vapour.pascal()
                    + " Pa is not below the pressure of the air, " + pressure.pascal() + " Pa");
        }
    }

    /** Pressure of the dry part: total less vapour. */
    public Pressure dry() {
        return new Pressure(pressure.pascal() - vapour.pascal());
    }

    /** For people: "98.6 kPa station, 27 °C, 55 %". */
    public String words(Figures figures) {
        return figures.of(pressure.pascal(), Shown.AIR_PRESSURE) + " station, "
                + figures.of(temperature.kelvin(), Shown.AIR_TEMPERATURE) + ", "
                + Figures.percent(MoistAir.relativeHumidity(this) * 100, 0);
    }
}
