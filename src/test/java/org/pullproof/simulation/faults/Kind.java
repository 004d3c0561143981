package org.pullproof.simulation.faults;

import java.util.Arrays;
import java.util.Optional;
import org.pullproof.health.faults.Fault;

/** What is wrong with an invented engine, with the share it is drawn with and the share it has among used cars (judgement). */
enum Kind {
    SOUND(25, 55.0, Optional.empty()),
    EXHAUST_VALVE(5.2, 2.0, Optional.of(Fault.EXHAUST_VALVE)),
    HELD_OPEN(5.2, 1.7, Optional.of(Fault.VALVE_HELD_OPEN)),
    INTAKE_VALVE(5.2, 0.7, Optional.of(Fault.INTAKE_VALVE)),
    PAIR(5.2, 0.9, Optional.of(Fault.GASKET_NEIGHBOUR)),
    COOLANT(5.2, 1.1, Optional.of(Fault.GASKET_COOLANT)),
    RINGS(5.2, 3.2, Optional.of(Fault.RINGS)),
    PISTON(5.2, 0.5, Optional.of(Fault.PISTON)),
    NOT_OPENING(5.2, 1.2, Optional.of(Fault.VALVE_NOT_OPENING)),
    IGNITION(5.2, 7.1, Optional.of(Fault.IGNITION)),
    FUEL(5.2, 3.9, Optional.of(Fault.FUEL)),
    VACUUM_LEAK(5.2, 1.6, Optional.of(Fault.VACUUM_LEAK)),
    TWO_FAULTS(4, 6.8, Optional.empty()),
    RINGS_ALL(4.6, 8.0, Optional.empty()),
    CAM_TIMING(4.6, 1.5, Optional.empty()),
    SPOILED(4.6, 4.0, Optional.empty());

    private final double drawn;
    private final double usual;
    private final Optional<Fault> fault;

    Kind(double drawn, double usual, Optional<Fault> fault) {
        this.drawn = drawn;
        this.usual = usual;
        this.fault = fault;
    }

    Optional<Fault> fault() {
        return fault;
    }

    boolean single() {
        return fault.isPresent();
    }

    /** What an engine of this kind counts for among used cars. */
    double weight() {
        return usual / drawn;
    }

    static Kind draw(Dice dice) {
        double[] shares =
                Arrays.stream(values()).mapToDouble(kind -> kind.drawn).toArray();
        return values()[dice.weighted(shares)];
    }
}
