package org.pullproof.simulation.faults;

import java.util.Map;
import java.util.Optional;
import org.pullproof.health.faults.CylinderReadings;
import org.pullproof.health.faults.EngineReadings;
import org.pullproof.health.faults.EngineState;
import org.pullproof.health.faults.Fault;
import org.pullproof.health.faults.Leak;
import org.pullproof.health.faults.Odds;

/** How much of everything is read, and which faults that much can tell apart. */
enum Evidence {
    BALANCE("balance only"),
    DRY("+ dry"),
    WET("+ first, wet"),
    LEAK("+ leak-down, air"),
    ALL("+ plugs, vacuum");

    private final String words;

    Evidence(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    private boolean has(Evidence other) {
        return compareTo(other) >= 0;
    }

    EngineReadings of(EngineReadings all) {
        Odds odds = has(ALL)
                ? all.odds()
                : new Odds(
                        has(DRY)
                                ? Map.of(
                                        EngineState.TEST_SPOILED,
                                        all.odds().states().get(EngineState.TEST_SPOILED))
                                : Map.of(),
                        all.odds().cylinders(),
                        all.odds().pairs());
        return new EngineReadings(
                all.cylinders().stream().map(this::of).toList(), all.pairs(), all.geometry(), all.flat(), odds);
    }

    private CylinderReadings of(CylinderReadings all) {
        Optional<Leak> leak = has(LEAK) ? all.leak() : Optional.empty();
        return new CylinderReadings(
                all.number(),
                has(DRY) ? all.dry() : Optional.empty(),
                has(WET) ? all.first() : Optional.empty(),
                has(WET) ? all.wet() : Optional.empty(),
                leak,
                all.drops(),
                has(ALL) ? all.plug() : Optional.empty(),
                Map.of());
    }

    /** A word for all faults that this much evidence cannot tell apart. */
    String told(Fault fault) {
        return switch (this) {
            case BALANCE -> "faulty";
            case DRY -> fault.leaks() || fault == Fault.VALVE_NOT_OPENING ? "hole" : "no hole";
            case WET -> afterOil(fault);
            case LEAK, ALL -> itself(fault);
        };
    }

    private static String afterOil(Fault fault) {
        return switch (fault.family()) {
            case VALVE, COOLANT, NEIGHBOUR, NOT_OPENING -> "valve or gasket";
            case RINGS_OR_PISTON -> "rings";
            default -> fault.family().words();
        };
    }

    private static String itself(Fault fault) {
        return switch (fault) {
            case INTAKE_VALVE -> "intake valve";
            case EXHAUST_VALVE, VALVE_HELD_OPEN -> "exhaust valve or held open";
            default -> fault.family().words();
        };
    }
}
