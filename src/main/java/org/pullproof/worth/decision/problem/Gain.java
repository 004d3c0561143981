package org.pullproof.worth.decision.problem;

/** A gain of band power. The same name is the same draw in every option. */
public sealed interface Gain {
    String name();

    /**
     * A gain that is expected, not measured.
     *
     * @param name what it is of
     * @param percent of band power
     */
    record Expected(String name, Normal percent) implements Gain {
        public Expected {
            Check.named("A gain", name);
        }
    }

    /**
     * A gain that pulls have measured; it is drawn in before it is counted, because the best of many noisy figures reads high.
     *
     * @param name what it is of
     * @param estimate in 100·ln
     * @param se its standard error, positive
     * @param degrees ν, degrees of freedom, at least 3: below, its square has no mean
     */
    record Measured(String name, double estimate, double se, double degrees) implements Gain {
        private static final double LEAST_DEGREES = 3;

        public Measured {
            Check.named("A gain", name);
            Check.finite("The measured gain of " + name, estimate);
            Check.positive("The standard error of " + name, se);
            Check.that(degrees >= LEAST_DEGREES, "The degrees of freedom of " + name, "at least 3", degrees);
        }
    }
}
