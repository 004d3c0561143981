package org.pullproof.weather;

import java.time.Duration;
import java.time.LocalDateTime;
import org.pullproof.units.Quantity;

/**
 * The air as it was read and typed at one moment; what follows from it is an {@link AirState}.
 *
 * @param time when it was read
 * @param place where, in the words of whoever read it; empty if not told
 * @param air as typed, in whatever form
 */
public record AirReading(LocalDateTime time, String place, TypedAir air) {
    /** How long a reading serves the pulls near it (common practice, no source). */
    public static final Duration SERVES = Duration.ofMinutes(20);

    public AirReading {
        place = place.strip();
    }

    public AirReading(LocalDateTime time, TypedAir air) {
        this(time, "", air);
    }

    /** The plainest form: station pressure, temperature at the intake, relative humidity. */
    public AirReading(LocalDateTime time, Quantity stationPressure, Quantity temperature, Quantity relativeHumidity) {
        this(
                time,
                new TypedAir(
                        new Barometer.Station(stationPressure), temperature, new Humidity.Relative(relativeHumidity)));
    }

    public AirState state() {
        return air.state();
    }
}
