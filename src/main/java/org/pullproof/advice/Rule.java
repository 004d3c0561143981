package org.pullproof.advice;

import java.util.Optional;

/** One rule of the next step: proposes something, or nothing if it has no bearing. */
@FunctionalInterface
interface Rule {
    Optional<NextStep> propose(Situation now);
}
