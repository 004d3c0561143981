package org.pullproof.worth.decision.answer;

/**
 * Two tests done together.
 *
 * @param first one
 * @param second the other
 * @param value gross
 * @param cost of both
 * @param named whether they pay so much more together that they are to be named
 */
public record PairAnswer(String first, String second, double value, double cost, boolean named) {
    public double net() {
        return value - cost;
    }
}
