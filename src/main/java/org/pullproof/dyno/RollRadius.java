package org.pullproof.dyno;

import java.util.Optional;

/** The radius without which the speed of a roll's surface does not tell how fast it turns. */
final class RollRadius {
    private RollRadius() {}

    static double needed(int line, String header, Optional<Double> metre) throws UnreadablePullException {
        if (metre.isEmpty()) {
            throw new UnreadablePullException(
                    line,
                    "the column \"" + header + "\" is the speed of the roll's surface: say its radius, such as"
                            + " --roll-radius 0.6m.");
        }
        return metre.get();
    }
}
