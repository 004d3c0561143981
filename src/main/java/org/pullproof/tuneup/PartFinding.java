package org.pullproof.tuneup;

import java.util.Optional;
import org.pullproof.units.Money;

/**
 * A part the tune-up uses up, and what became of it.
 *
 * @param part its name
 * @param step id of the step that uses it; empty for one the owner added
 * @param price what it costs about, or was paid; empty where neither the trade nor the owner says
 * @param told what the owner told of it
 * @param needed whether its step is still to do
 * @param age of a part that was kept: how old it was and how far it had run, if known
 */
public record PartFinding(
        String part,
        Optional<String> step,
        Optional<Money> price,
        Optional<PartRecord> told,
        boolean needed,
        Optional<String> age) {
    /** "to buy", "bought", "old one kept"; empty where its step is done and nothing was told. */
    public String words() {
        return told.map(part -> part.fate().words()).orElse(needed ? PartRecord.Fate.TO_BUY.words() : "");
    }

    boolean toBuy() {
        return told.map(part -> part.fate() == PartRecord.Fate.TO_BUY).orElse(needed);
    }
}
