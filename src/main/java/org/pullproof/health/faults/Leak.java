package org.pullproof.health.faults;

import java.util.Optional;
import java.util.Set;
import org.pullproof.health.AirPlace;
import org.pullproof.health.leakdown.LeakTester;

/**
 * One leak-down reading.
 *
 * @param percent the leakage; empty where the tester told nothing
 * @param air where air was heard; empty if nobody listened, present and empty if nothing was heard
 * @param tester what it was read with
 */
public record Leak(Optional<Range> percent, Optional<Set<AirPlace>> air, LeakTester tester) {
    /**
     * Leakage in percent: a figure where both are the same, else a zone.
     *
     * @param from least
     * @param to greatest
     */
    public record Range(double from, double to) {
        boolean isZone() {
            return to > from;
        }
    }

    Leak withoutPercent() {
        return new Leak(Optional.empty(), air, tester);
    }

    Leak withoutAir() {
        return new Leak(percent, Optional.empty(), tester);
    }
}
