package org.pullproof.tuneup;

import java.time.LocalDate;
import java.util.Optional;
import org.pullproof.units.Dimension;
import org.pullproof.units.Quantity;

/**
 * Something new in the engine that has to bed in before it is loaded fully.
 *
 * @param what is new
 * @param since the day of the first start with it
 * @param odometer read that day, if it was
 * @param bedded why it counts as bedded in, in the words of the builder or owner; empty while it does not
 */
public record BreakIn(What what, LocalDate since, Optional<Quantity> odometer, Optional<String> bedded) {
    public BreakIn {
        odometer.ifPresent(read -> read.requireDimension(Dimension.LENGTH));
        if (bedded.filter(String::isBlank).isPresent()) {
            throw new IllegalArgumentException("Say why it counts as bedded in; the reason stands in the report.");
        }
    }

    /** What beds in. */
    public enum What {
        RINGS("rings", "new rings or honed bores"),
        CAM("cam", "new flat-tappet camshaft or lifters"),
        BEARINGS("bearings", "new bearings");

        private final String key;
        private final String words;

        What(String key, String words) {
            this.key = key;
            this.words = words;
        }

        /** Its name on the command line. */
        public String key() {
            return key;
        }

        public String words() {
            return words;
        }
    }
}
