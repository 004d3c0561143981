package org.pullproof.dyno;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.pullproof.weather.AirReading;

/** The dyno days of a session; each method returns the next list and leaves the given one as it is. */
public final class DynoDays {
    private DynoDays() {}

    /** Keeps a reading of the air in order of time; one of the same minute is replaced. */
    public static List<DynoDay> with(List<DynoDay> days, AirReading reading) {
        return changed(days, reading.time().toLocalDate(), day -> {
            Stream<AirReading> others =
                    day.air().stream().filter(air -> !air.time().equals(reading.time()));
            List<AirReading> air = Stream.concat(others, Stream.of(reading))
                    .sorted(Comparator.comparing(AirReading::time))
                    .toList();
            return day.withAir(air);
        });
    }

    /** Appends a pull to its day. */
    public static List<DynoDay> with(List<DynoDay> days, Pull pull) {
        return changed(days, pull.time().toLocalDate(), day -> {
            List<Pull> pulls = new ArrayList<>(day.pulls());
            pulls.add(pull);
            return day.withPulls(pulls);
        });
    }

    /** Puts a pull in the place of the one with its id. */
    public static List<DynoDay> replaced(List<DynoDay> days, Pull pull) {
        return days.stream()
                .map(day -> day.withPulls(day.pulls().stream()
                        .map(old -> old.id().equals(pull.id()) ? pull : old)
                        .toList()))
                .toList();
    }

    /** The number the next pull of a setup gets: one more than the highest so far. */
    public static int nextNumber(List<DynoDay> days, String setup) {
        return days.stream()
                        .flatMap(day -> day.pulls().stream())
                        .filter(pull -> pull.setup().equals(setup))
                        .mapToInt(Pull::number)
                        .max()
                        .orElse(0)
                + 1;
    }

    /** Changes the day of that date, made if there is none; days stay in order of date. */
    public static List<DynoDay> changed(List<DynoDay> days, LocalDate date, UnaryOperator<DynoDay> change) {
        DynoDay day = days.stream()
                .filter(known -> known.date().equals(date))
                .findFirst()
                .orElse(new DynoDay(date, List.of(), List.of()));
        Stream<DynoDay> others = days.stream().filter(known -> !known.date().equals(date));
        return Stream.concat(others, Stream.of(change.apply(day)))
                .sorted(Comparator.comparing(DynoDay::date))
                .toList();
    }
}
