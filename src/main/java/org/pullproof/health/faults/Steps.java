package org.pullproof.health.faults;

import org.pullproof.health.hole.Areas;

/**
 * A grid of areas, even in the logarithm.
 *
 * @param from smallest, mm²
 * @param to largest, mm²
 * @param count how many
 */
public record Steps(double from, double to, int count) {
    double[] areas() {
        return new Areas(from, to, count).all();
    }
}
