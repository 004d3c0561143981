package org.pullproof.health.faults;

/**
 * Two neighbours in a bank.
 *
 * @param one the lower number
 * @param other the higher number
 */
public record Pair(int one, int other) {
    public Pair {
        if (one >= other) {
            throw new IllegalArgumentException("The lower number of a pair stands first: " + one + ", " + other);
        }
    }

    public static Pair of(int a, int b) {
        return new Pair(Math.min(a, b), Math.max(a, b));
    }

    public boolean has(int cylinder) {
        return cylinder == one || cylinder == other;
    }

    /** The neighbour of one of the two. */
    public int beside(int cylinder) {
        return cylinder == one ? other : one;
    }
}
