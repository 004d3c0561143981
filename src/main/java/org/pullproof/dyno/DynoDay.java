package org.pullproof.dyno;

import java.time.LocalDate;
import java.util.List;
import org.pullproof.weather.AirReading;

/**
 * One day on one dyno.
 *
 * @param date the day
 * @param air the air as read, in order of time
 * @param pulls the pulls in the order they were made
 */
public record DynoDay(LocalDate date, List<AirReading> air, List<Pull> pulls) {
    public DynoDay {
        air = List.copyOf(air);
        pulls = List.copyOf(pulls);
    }
}
