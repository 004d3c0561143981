package org.pullproof.health.faults;

import java.util.List;
import org.pullproof.engine.Geometry;

/**
 * All that the fault model weighs, in SI units.
 *
 * @param cylinders every cylinder of the engine, read or not, 1 first
 * @param pairs neighbours in a bank
 * @param geometry measures of a cylinder
 * @param flat whether the cylinders lie, so that oil runs off to one side
 * @param odds what signs of the whole engine say
 */
public record EngineReadings(
        List<CylinderReadings> cylinders, List<Pair> pairs, Geometry geometry, boolean flat, Odds odds) {
    public EngineReadings {
        cylinders = List.copyOf(cylinders);
        pairs = List.copyOf(pairs);
    }

    boolean anyCompression() {
        return cylinders.stream()
                .anyMatch(one -> one.dry().isPresent() || one.wet().isPresent());
    }

    boolean anyWet() {
        return cylinders.stream().anyMatch(one -> one.wet().isPresent());
    }
}
