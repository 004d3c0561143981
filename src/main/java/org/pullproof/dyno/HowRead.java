package org.pullproof.dyno;

import java.util.List;
import java.util.Optional;

/**
 * How the figures of a pull are got out of its file.
 *
 * @param columns what a person said of the file's columns; empty if the headers say it all
 * @param part which pull of the file it is, from 1
 * @param drum the drum that power is computed from, where the file has none, and held against it where it has
 * @param asMeasured whether a person said that the figures are as measured though the file says corrected
 */
public record HowRead(List<ColumnChoice> columns, int part, Optional<Drum> drum, boolean asMeasured) {
    public HowRead {
        columns = List.copyOf(columns);
        if (part < 1) {
            throw new IllegalArgumentException("The pulls of a file are counted from 1, was " + part);
        }
    }

    /** The only pull of a file that has its power. */
    public static HowRead by(List<ColumnChoice> columns) {
        return new HowRead(columns, 1, Optional.empty(), false);
    }

    /** Another pull of the same file. */
    public HowRead ofPart(int other) {
        return new HowRead(columns, other, drum, asMeasured);
    }

    /** The same, told that the figures are as measured. */
    public HowRead toldAsMeasured() {
        return new HowRead(columns, part, drum, true);
    }
}
