package org.pullproof.changes;

import java.util.Optional;

/**
 * A comparison that has no figures, because one side has no pull that counts.
 *
 * @param name "base → timing 32°"
 * @param from id of the older setup
 * @param to id of the newer setup
 * @param recorded whether this is the step the newer setup was made by
 * @param change the recorded change, if this comparison is one
 * @param call {@code SPOILED} where there are pulls but none can be compared, else {@code NO_CALL}
 * @param sentence the reason in words
 */
public record Unjudged(
        String name, String from, String to, boolean recorded, Optional<Change> change, Call call, String sentence) {}
