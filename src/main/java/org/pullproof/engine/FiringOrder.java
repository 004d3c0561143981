package org.pullproof.engine;

import java.util.List;

/**
 * The order in which the cylinders of a four-stroke engine fire, and the turn of the crank between them.
 *
 * @param cylinders the cylinder numbers as they fire, beginning with the reference cylinder
 * @param intervals degrees of crank from each cylinder to the one after it (the last: back to the first); they sum to 720
 */
public record FiringOrder(List<Integer> cylinders, List<Integer> intervals) {
    /** Degrees of crank in one cycle of four strokes. */
    public static final int CYCLE = 720;

    public FiringOrder {
        cylinders = List.copyOf(cylinders);
        intervals = List.copyOf(intervals);
        if (cylinders.stream().distinct().count() != cylinders.size()) {
            throw new IllegalArgumentException("The firing order " + cylinders + " names a cylinder twice");
        }
        if (intervals.size() != cylinders.size()) {
            throw new IllegalArgumentException("The firing order has " + cylinders.size() + " cylinders but "
                    + intervals.size() + " intervals; it needs one interval a cylinder");
        }
        int sum = intervals.stream().mapToInt(Integer::intValue).sum();
        if (sum != CYCLE || intervals.stream().anyMatch(interval -> interval <= 0)) {
            throw new IllegalArgumentException(
                    "The firing intervals " + intervals + " sum to " + sum + "°; four strokes need " + CYCLE + "°");
        }
    }
}
