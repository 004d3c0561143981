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
 * @param how how its figures are got out of the file
 * @param correctedAlready the standard the file's figures are already corrected to, if so
 * @param excluded why it does not count, if a person took it out
 */
public record Pull(
        String setup,
        int number,
        PullFile file,
        LocalDateTime time,
        Optional<LocalDateTime> takenIn,
        HowRead how,
        Optional<Standard> correctedAlready,
        Optional<String> excluded) {
    public Pull {
        if (number < 1) {
            throw new IllegalArgumentException("A pull's number begins at 1, was " + number);
        }
    }

    /** A pull made at a time that was told; the only one of its file, which has its power. */
    public Pull(
            String setup,
            int number,
            PullFile file,
            LocalDateTime time,
            List<ColumnChoice> columns,
            Optional<Standard> correctedAlready,
            Optional<String> excluded) {
        this(setup, number, file, time, Optional.empty(), HowRead.by(columns), correctedAlready, excluded);
    }

    /** The key of this pull: setup and number. */
    public String id() {
        return setup + "-" + number;
    }

    /** This pull, excluded for a reason or counted. */
    public Pull withExcluded(Optional<String> reason) {
        return new Pull(setup, number, file, time, takenIn, how, correctedAlready, reason);
    }
}
