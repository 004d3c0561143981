package org.pullproof.tuneup;

import java.time.LocalDateTime;

/**
 * A hose, connector or bolt that came off and that no step names. It must be back before the start, as all the others.
 *
 * @param name what it is
 * @param since when it came off
 */
public record AddedPart(String name, LocalDateTime since) {
    public AddedPart {
        name = name.strip();
        if (name.isEmpty()) {
            throw new IllegalArgumentException("Write what came off, such as \"hose from the canister\".");
        }
    }
}
