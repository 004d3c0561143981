package org.pullproof.health.faults;

import java.util.OptionalInt;

/**
 * What may hold for one cylinder: a fault of its own, or one it shares with a neighbour.
 *
 * @param neighbour the other cylinder of a pair
 */
public record Candidate(Fault fault, OptionalInt neighbour) {
    public static Candidate of(Fault fault) {
        return new Candidate(fault, OptionalInt.empty());
    }

    static Candidate withNeighbour(int neighbour) {
        return new Candidate(Fault.GASKET_NEIGHBOUR, OptionalInt.of(neighbour));
    }
}
