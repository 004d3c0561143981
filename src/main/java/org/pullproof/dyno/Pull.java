package org.pullproof.dyno;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.pullproof.weather.Standard;

/**
 * One pull as the session keeps it; its figures lie in the file.
 *
 * @param setup id of the setup it was made on
 * @param number its place among the pulls of that setup, from 1; kept when others are excluded
 * @param file where its figures are
 * @param time when it was made
 * @param takenIn when its file was taken in, if nobody told when the pull was made and {@code time} is only the file's own; empty if
 *     it was told
 * @param columns what a person said of the file's columns; empty if the header says it all
 * @param correctedAlready the standard the file's figures are already corrected to, if so
 * @param excluded why it does not count, if a person took it out
 */
public record Pull(
        String setup,
        int number,
        PullFile file,
        LocalDateTime time,
        Optional<LocalDateTime> takenIn,
        List<ColumnChoice> columns,
        Optional<Standard> correctedAlready,
        Optional<String> excluded) {
    public Pull {
        columns = List.copyOf(columns);
        if (number < 1) {
            throw new IllegalArgumentException("A pull's number begins at 1, was " + number);
        }
    }

    /** A pull made at a time that was told. */
    public Pull(
            String setup,
            int number,
            PullFile file,
            LocalDateTime time,
            List<ColumnChoice> columns,
            Optional<Standard> correctedAlready,
            Optional<String> excluded) {
        this(setup, number, file, time, Optional.empty(), columns, correctedAlready, excluded);
    }

    /** The key of this pull: setup and number. */
    public String id() {
        return setup + "-" + number;
    }

    /** This pull, excluded for a reason or counted. */
    public Pull withExcluded(Optional<String> reason) {
        return new Pull(setup, number, file, time, takenIn, columns, correctedAlready, reason);
    }
}
