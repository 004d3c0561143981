package org.pullproof.changes;

import java.util.stream.IntStream;

/** Holm's step-down adjustment of p for the number of changes tried (Holm 1979, P). */
final class Holm {
    /** Chance of any false call that is accepted over all changes. */
    static final double LEVEL = 0.10;

    private Holm() {}

    /** Returns the adjusted p of each: p sorted ascending times (m − r + 1), running maximum, at most 1. */
    static double[] adjusted(double[] p) {
        int[] order = IntStream.range(0, p.length)
                .boxed()
                .sorted((a, b) -> Double.compare(p[a], p[b]))
                .mapToInt(Integer::intValue)
                .toArray();
        double[] adjusted = new double[p.length];
        double largest = 0;
        for (int r = 0; r < order.length; r++) {
            largest = Math.max(largest, Math.min(1, p[order[r]] * (p.length - r)));
            adjusted[order[r]] = largest;
        }
        return adjusted;
    }
}
