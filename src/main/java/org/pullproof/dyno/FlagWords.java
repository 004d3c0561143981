package org.pullproof.dyno;

import java.util.Set;

/** Which flags make a pull unfit to be compared; every other one is a warning. */
final class FlagWords {
    private static final Set<String> HARD = Set.of(
            "band", "throttle", "lift", "slip", "mixture", "knock", "boost", "start-window", "unit", "duplicate");

    /** Its answer decides: figures on the session's standard can be compared. */
    private static final String CORRECTED = "corrected";

    private FlagWords() {}

    /**
     * @param corrected whether the pull has a figure on the session's standard
     */
    static boolean hard(String flag, boolean corrected) {
        String keyword = flag.substring(0, Math.max(0, flag.indexOf(':')));
        return HARD.contains(keyword) || (keyword.equals(CORRECTED) && !corrected);
    }
}
