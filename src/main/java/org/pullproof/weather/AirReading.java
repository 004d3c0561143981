package org.pullproof.weather;

import java.time.LocalDateTime;
import org.pullproof.units.Dimension;
import org.pullproof.units.Quantity;

/**
 * The air as it was read and typed; what follows from it is an {@link AirState}.
 *
 * @param time when it was read
 * @param stationPressure absolute pressure of the air at the place
 * @param temperature of the air the engine takes in
 * @param relativeHumidity 0 to 100 %, over water
 */
public record AirReading(
        LocalDateTime time, Quantity stationPressure, Quantity temperature, Quantity relativeHumidity) {
    public AirReading {
        stationPressure.requireDimension(Dimension.PRESSURE);
        temperature.requireDimension(Dimension.TEMPERATURE);
        relativeHumidity.requireDimension(Dimension.SHARE);
    }
}
