package org.pullproof.worth.decision.problem;

import java.util.List;

/** Refusals in one wording: the field, what would be right, and what it was. */
final class Check {
    /** Rounding that sums of typed chances may show. */
    private static final double ROUNDING = 1e-6;

    private Check() {}

    static void that(boolean right, String field, String rule, Object was) {
        if (!right) {
            throw new IllegalArgumentException(field + " must be " + rule + ", was " + was + ".");
        }
    }

    static void finite(String field, double value) {
        that(Double.isFinite(value), field, "a finite number", value);
    }

    static void notNegative(String field, double value) {
        that(value >= 0 && Double.isFinite(value), field, "0 or more", value);
    }

    static void positive(String field, double value) {
        that(value > 0 && Double.isFinite(value), field, "more than 0", value);
    }

    static void chance(String field, double value) {
        that(value >= 0 && value <= 1, field, "from 0 to 1", value);
    }

    /** A share that would make a money machine at 1: ρ of the engine money comes back, so it stays below all of it. */
    static void shareBelowOne(String field, double value) {
        that(value >= 0 && value < 1, field, "at least 0 and below 1", value);
    }

    static void named(String field, String name) {
        that(!name.isBlank(), field, "a name", "blank");
    }

    static void sumsToOne(String field, double sum) {
        if (!(Math.abs(sum - 1) <= ROUNDING)) {
            throw new IllegalArgumentException(field + " must add up to 1, but come to " + sum + ".");
        }
    }

    static void atLeastOne(String field, List<?> list) {
        that(!list.isEmpty(), field, "one or more", "none");
    }
}
