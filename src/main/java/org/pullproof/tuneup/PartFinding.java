package org.pullproof.tuneup;

import java.util.Optional;
import org.pullproof.units.Money;

/**
 * A part the tune-up uses up, and what became of it.
 *
 * @param part its name
 * @param step id of the step that uses it; empty for one the owner added
 * @param price what it costs about, or was paid; empty for what was kept, or where nobody says
 * @param told what the owner told of it
 * @param needed whether the start gate is still to come
 * @param age of a part that was kept: how old it was and how far it had run, if known
 */
public record PartFinding(
        String part,
        Optional<String> step,
        Optional<Money> price,
        Optional<PartRecord> told,
        boolean needed,
        Optional<String> age) {
    /** "to buy", "bought", "old one kept"; empty where the engine was started and nothing told. */
    public String words() {
        return told.map(part -> part.fate().words()).orElse(needed ? PartRecord.Fate.TO_BUY.words() : "");
    }

    boolean toBuy() {
        return told.map(part -> part.fate() == PartRecord.Fate.TO_BUY).orElse(needed);
    }
}
