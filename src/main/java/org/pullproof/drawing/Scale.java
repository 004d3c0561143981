package org.pullproof.drawing;

/**
 * A straight mapping from a value to a place on the picture.
 *
 * @param from value that lies at {@code at}
 * @param to value that lies at {@code until}
 * @param at px
 * @param until px
 */
record Scale(double from, double to, double at, double until) {
    double of(double value) {
        return at + (value - from) / (to - from) * (until - at);
    }

    /** The place of a value, or the nearer end if it lies outside. */
    double within(double value) {
        return of(Math.max(Math.min(from, to), Math.min(Math.max(from, to), value)));
    }
}
