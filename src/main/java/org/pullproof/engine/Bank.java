package org.pullproof.engine;

import java.util.List;

/**
 * One bank of cylinders.
 *
 * @param name as people call it: "A", "left"
 * @param cylinders their numbers from front to rear, at least one
 * @param leads whether this bank stands a third of a pitch further forward than the other
 */
public record Bank(String name, List<Integer> cylinders, boolean leads) {
    public Bank {
        cylinders = List.copyOf(cylinders);
        if (cylinders.isEmpty()) {
            throw new IllegalArgumentException("Bank " + name + " has no cylinder");
        }
    }
}
