package org.pullproof.changes;

import java.util.List;

/**
 * An order of pulls for a day and what it can see.
 *
 * @param order names of the setups in the order they are visited, one a visit; the first is the base
 * @param pullsPerSetup pulls at each visit
 * @param detectablePercent the smallest gain that this plan sees with 80 % chance, at 5 % false gains, percent; of several changes
 *     the one it sees worst
 */
public record Plan(List<String> order, int pullsPerSetup, double detectablePercent) {
    public Plan {
        order = List.copyOf(order);
    }

    public int totalPulls() {
        return order.size() * pullsPerSetup;
    }

    /** Pulls back at the base after its first visit. */
    public int controlPulls() {
        long visits = order.stream().filter(order.get(0)::equals).count();
        return (int) (visits - 1) * pullsPerSetup;
    }

    /** How often the setup is changed. */
    public int changes() {
        return order.size() - 1;
    }

    /** Whether some setup is visited again, so that drift shows in the pulls. */
    public boolean returns() {
        return order.stream().distinct().count() < order.size();
    }
}
