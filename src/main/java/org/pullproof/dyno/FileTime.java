package org.pullproof.dyno;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the lines before the figures say of when they were made. Only the order year, month, day is read: any other could be two
 * dates.
 *
 * @param date the day, if it stands there
 * @param clock the time of day, if it stands there
 */
public record FileTime(Optional<LocalDate> date, Optional<LocalTime> clock) {
    private static final Pattern DATE = Pattern.compile("\\b(20\\d\\d)[-/.](\\d{1,2})[-/.](\\d{1,2})(?=\\D|$)");
    private static final Pattern CLOCK =
            Pattern.compile("(?<![\\d:])([01]?\\d|2[0-3]):([0-5]\\d)(?::([0-5]\\d))?(?![\\d:])");

    static FileTime in(List<TableRow> rows) {
        List<String> lines =
                rows.stream().map(row -> String.join(" ", row.cells())).toList();
        Optional<LocalDate> date =
                lines.stream().flatMap(line -> date(line).stream()).findFirst();
        Optional<LocalTime> clock = date.flatMap(
                known -> lines.stream().flatMap(line -> clock(line).stream()).findFirst());
        return new FileTime(date, clock);
    }

    /**
     * The time of the file's figures; what the file does not say is taken from another time.
     *
     * @return empty if the file says no day
     */
    Optional<LocalDateTime> at(LocalDateTime otherwise) {
        return date.map(day -> day.atTime(clock.orElse(otherwise.toLocalTime())));
    }

    private static Optional<LocalDate> date(String line) {
        Matcher found = DATE.matcher(line.replace('T', ' '));
        try {
            return found.find()
                    ? Optional.of(LocalDate.of(number(found, 1), number(found, 2), number(found, 3)))
                    : Optional.empty();
        } catch (DateTimeException none) {
            return Optional.empty();
        }
    }

    private static Optional<LocalTime> clock(String line) {
        Matcher found = CLOCK.matcher(line.replace('T', ' '));
        return found.find()
                ? Optional.of(
                        LocalTime.of(number(found, 1), number(found, 2), found.group(3) == null ? 0 : number(found, 3)))
                : Optional.empty();
    }

    private static int number(Matcher found, int group) {
        return Integer.parseInt(found.group(group));
    }
}
