package org.pullproof.files;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An earlier document of a session that was kept.
 *
 * @param number counts up from 1; the order in which versions were kept, also where the clock was set back
 * @param time when it was kept, by the clock of the place
 */
public record KeptVersion(int number, LocalDateTime time) {
    private static final Pattern NAME = Pattern.compile("(\\d{4,9})_(\\d{4}-\\d\\d-\\d\\d_\\d{6})\\.json");
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd_HHmmss", Locale.ROOT);
    private static final DateTimeFormatter SHOWN = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT);

    /** The version a file name stands for; empty for a name that none was ever given. */
    static Optional<KeptVersion> named(String name) {
        Matcher matcher = NAME.matcher(name);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        try {
            return Optional.of(
                    new KeptVersion(Integer.parseInt(matcher.group(1)), LocalDateTime.parse(matcher.group(2), TIME)));
        } catch (DateTimeParseException noSuchTime) {
            return Optional.empty();
        }
    }

    /** Its file name, which sorts in the order of keeping: {@code 0007_2026-06-14_134000.json}. */
    public String name() {
        return String.format(Locale.ROOT, "%04d_%s.json", number, time.format(TIME));
    }

    /** "2026-06-14 13:40:00". */
    public String when() {
        return time.format(SHOWN);
    }
}
