package org.pullproof.weather;

import java.time.LocalDateTime;
import org.pullproof.units.Dimension;
import org.pullproof.units.Quantity;

/** Air as typed, for tests. */
public final class Readings {
    private Readings() {}

    public static AirReading air(String time, String pressure, String temperature, String humidity) {
        return new AirReading(
                LocalDateTime.parse(time),
                Quantity.parse(pressure, Dimension.PRESSURE),
                Quantity.parse(temperature, Dimension.TEMPERATURE),
                Quantity.parse(humidity, Dimension.SHARE));
    }

    public static AirReading air(String pressure, String temperature, String humidity) {
        return air("2026-06-14T13:40", pressure, temperature, humidity);
    }
}
