package org.pullproof.tuneup;

import java.time.LocalDate;
import java.util.Optional;
import org.pullproof.units.Dimension;
import org.pullproof.units.Money;
import org.pullproof.units.Quantity;

/**
 * What the owner told of a part the tune-up uses up.
 *
 * @param part its name
 * @param fate whether it is still to buy, bought, or the old one was kept
 * @param price what it costs, or was paid
 * @param note which one fits, where it was bought; may be empty
 * @param told the day this was told; of a part that was bought, the day it was paid
 * @param fitted of a part that was kept: the day it was fitted, if known
 * @param fittedAt of a part that was kept: the odometer when it was fitted, if known
 */
public record PartRecord(
        String part,
        Fate fate,
        Optional<Money> price,
        String note,
        LocalDate told,
        Optional<LocalDate> fitted,
        Optional<Quantity> fittedAt) {
    public PartRecord {
        note = note.strip();
        fittedAt.ifPresent(read -> read.requireDimension(Dimension.LENGTH));
        if (fate == Fate.BOUGHT && price.isEmpty()) {
            throw new IllegalArgumentException(part + ": say what was paid for it, 0USD if nothing was.");
        }
        LocalDate day = told;
        if (fitted.filter(since -> since.isAfter(day)).isPresent()) {
            throw new IllegalArgumentException(part + ": it cannot have been fitted after " + day + ".");
        }
    }

    /** What becomes of a part. */
    public enum Fate {
        TO_BUY("to buy"),
        BOUGHT("bought"),
        KEPT("old one kept");

        private final String words;

        Fate(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
