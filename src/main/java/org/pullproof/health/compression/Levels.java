package org.pullproof.health.compression;

import java.util.Collection;
import java.util.Optional;

/**
 * Highest, lowest and mean of two or more readings, Pa over the surroundings.
 *
 * @param highest above zero
 * @param lowest not negative
 * @param mean of all
 */
public record Levels(double highest, double lowest, double mean) {

    /** Empty with fewer than two readings, or where none is above zero. */
    public static Optional<Levels> of(Collection<Double> readings) {
        double highest = readings.stream().mapToDouble(r -> r).max().orElse(0);
        if (readings.size() < 2 || highest <= 0) {
            return Optional.empty();
        }
        double lowest = readings.stream().mapToDouble(r -> r).min().orElse(0);
        double mean = readings.stream().mapToDouble(r -> r).average().orElse(0);
        return Optional.of(new Levels(highest, lowest, mean));
    }

    /** (highest − lowest)/highest in percent. */
    public double spreadPercent() {
        return 100 * (highest - lowest) / highest;
    }

    /** lowest/highest in percent. */
    public double lowestShare() {
        return 100 * lowest / highest;
    }
}
