package org.pullproof.engine;

import java.util.ArrayList;
import java.util.List;

/**
 * Which plug wires must not run side by side: a spark may jump into the wire of the cylinder that fires next on the same bank.
 *
 * <p>Source: Army TM 5-4210-230-14&amp;P-1, note on cross fire (P): "most likely to occur on a V8 engine between consecutively
 * firing cylinders when these cylinders are located on the same bank". It is an advice for wires; coils on the plugs have none.
 */
public final class Crossfire {
    private Crossfire() {}

    /**
     * Two cylinders of one bank that fire in succession.
     *
     * @param first fires first
     * @param second fires next
     * @param adjacent whether they also stand side by side: keep these apart before all others
     */
    public record Pair(int first, int second, boolean adjacent) {}

    /** Every such pair in firing order; the last cylinder is followed by the first. */
    public static List<Pair> pairs(EngineProfile profile) {
        List<Integer> order = profile.firing().cylinders();
        List<Pair> pairs = new ArrayList<>();
        for (int k = 0; k < order.size(); k++) {
            int first = order.get(k);
            int second = order.get((k + 1) % order.size());
            List<Integer> bank = profile.bankOf(first).cylinders();
            if (bank.contains(second)) {
                pairs.add(new Pair(first, second, Math.abs(bank.indexOf(first) - bank.indexOf(second)) == 1));
            }
        }
        return pairs;
    }
}
