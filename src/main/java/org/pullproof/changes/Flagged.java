package org.pullproof.changes;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.pullproof.dyno.PullFindings;

/** Which flags of a pull say that it was not made under conditions that can be compared (power-change method, section 3). */
final class Flagged {
    private static final Set<String> SPOIL =
            Set.of("band", "duplicate", "throttle", "lift", "slip", "mixture", "knock", "start-window", "shape");

    /** Tells of a pull that has no figure on the standard of the others; where it has one, it can be compared. */
    private static final String CORRECTED = "corrected";

    private Flagged() {}

    /** Whether a pull that has a figure is doubtful. */
    static boolean spoils(PullFindings pull) {
        return pull.flags().stream().anyMatch(flag -> SPOIL.contains(keyword(flag)));
    }

    /** Whether a flag explains why a pull has no figure that can be compared. */
    static boolean tellsWhyNotCompared(PullFindings pull) {
        return reason(pull).isPresent();
    }

    /** The names of the pulls that are doubtful, with the flag of the first. */
    static String named(List<PullFindings> pulls) {
        return explained(pulls.stream().filter(Flagged::spoils).toList());
    }

    /** The names of these pulls, each with a telling flag, and the flag of the first. */
    static String explained(List<PullFindings> flagged) {
        String names = Wording.list(flagged.stream().map(PullFindings::name).toList());
        return names + " (" + reason(flagged.get(0)).orElseThrow() + ")";
    }

    private static Optional<String> reason(PullFindings pull) {
        return pull.flags().stream()
                .filter(flag -> SPOIL.contains(keyword(flag)) || keyword(flag).equals(CORRECTED))
                .map(flag -> flag.endsWith(".") ? flag.substring(0, flag.length() - 1) : flag)
                .findFirst();
    }

    static boolean has(PullFindings pull, String keyword) {
        return pull.flags().stream().anyMatch(flag -> keyword(flag).equals(keyword));
    }

    private static String keyword(String flag) {
        return flag.split("[^a-z-]", 2)[0];
    }
}
