package org.pullproof.changes;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.pullproof.dyno.PullFindings;

/** Which flags of a pull say that it was not made under conditions that can be compared (power-change method, section 3). */
final class Flagged {
    private static final Set<String> SPOIL = Set.of(
            "band",
            "corrected",
            "duplicate",
            "throttle",
            "lift",
            "slip",
            "mixture",
            "knock",
            "start-window",
            "rotating-parts");

    private Flagged() {}

    static boolean spoils(PullFindings pull) {
        return reason(pull).isPresent();
    }

    /** The first such flag, in its own words. */
    static Optional<String> reason(PullFindings pull) {
        return pull.flags().stream()
                .filter(flag -> SPOIL.contains(keyword(flag)))
                .findFirst();
    }

    /** The names of the pulls that carry one, with the flag of the first. */
    static String named(List<PullFindings> pulls) {
        List<PullFindings> flagged = pulls.stream().filter(Flagged::spoils).toList();
        String names = Wording.list(flagged.stream().map(PullFindings::name).toList());
        return names + " (" + reason(flagged.get(0)).orElseThrow() + ")";
    }

    private static String keyword(String flag) {
        return flag.split("[^a-z-]", 2)[0];
    }
}
