package org.pullproof.health;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.pullproof.health.faults.Candidate;
import org.pullproof.health.faults.EngineState;
import org.pullproof.health.faults.Fault;
import org.pullproof.health.faults.FaultConstants;

/** Words for faults: named only when they, or their family, are likely enough. */
final class FaultWords {
    private FaultWords() {}

    /** For a table: {@code exhaust valve leaks}. */
    static String name(Candidate candidate) {
        return switch (candidate.fault()) {
            case SOUND -> "sound";
            case IGNITION -> "no spark";
            case FUEL -> "no fuel";
            case VACUUM_LEAK -> "false air at its runner";
            case VALVE_HELD_OPEN -> "valve held open";
            case EXHAUST_VALVE -> "exhaust valve leaks";
            case INTAKE_VALVE -> "intake valve leaks";
            case RINGS -> "rings or bore worn";
            case PISTON -> "piston holed or broken";
            case GASKET_COOLANT -> "gasket or crack to the coolant";
            case VALVE_NOT_OPENING -> "valve does not open";
            case OTHER -> "readings do not fit together";
            case GASKET_NEIGHBOUR ->
                "gasket to cylinder " + candidate.neighbour().orElse(0);
        };
    }

    /** For a sentence that begins with the cylinder: {@code leaks at the exhaust valve}. */
    private static String does(Fault fault) {
        return switch (fault) {
            case SOUND -> "is sound";
            case IGNITION -> "has no spark";
            case FUEL -> "gets no fuel";
            case VACUUM_LEAK -> "draws false air at its runner";
            case VALVE_HELD_OPEN -> "has a valve held open";
            case EXHAUST_VALVE -> "leaks at the exhaust valve";
            case INTAKE_VALVE -> "leaks at the intake valve";
            case RINGS -> "leaks past its rings";
            case PISTON -> "has a holed or broken piston";
            case GASKET_COOLANT -> "leaks into the coolant";
            case VALVE_NOT_OPENING -> "has a valve that does not open";
            case OTHER -> "has readings that do not fit together";
            case GASKET_NEIGHBOUR -> "leaks into its neighbour";
        };
    }

    private static String does(Fault.Family family) {
        return switch (family) {
            case SPARK_OR_MIXTURE -> "lacks spark or mixture";
            case VALVE -> "leaks at a valve";
            case RINGS_OR_PISTON -> "leaks past rings or piston";
            case SOUND, COOLANT, NOT_OPENING, OTHER, NEIGHBOUR -> "is at fault";
        };
    }

    /**
     * What to say of a cylinder called faulty: its fault where that has the chance it takes to be named, else its family, else
     * that it is at fault, each with the likeliest.
     */
    static String clause(int cylinder, Map<Candidate, Double> chances, FaultConstants.Verdicts verdicts) {
        Candidate likeliest = faulty(chances).stream()
                .max(Comparator.comparing(candidate -> chances.getOrDefault(candidate, 0.0)))
                .orElse(Candidate.of(Fault.OTHER));
        Fault fault = likeliest.fault();
        String who = "cylinder " + cylinder + " ";
        double p = chances.getOrDefault(likeliest, 0.0);
        if (p >= verdicts.named()) {
            return who + (p >= verdicts.settled() ? "" : "most likely ") + does(fault);
        }
        boolean family = families(chances).getOrDefault(fault.family(), 0.0) >= verdicts.named();
        return who + (family ? does(fault.family()) : "is at fault") + ", most likely " + fault.words();
    }

    private static List<Candidate> faulty(Map<Candidate, Double> chances) {
        return chances.keySet().stream()
                .filter(candidate -> candidate.fault() != Fault.SOUND)
                .toList();
    }

    private static Map<Fault.Family, Double> families(Map<Candidate, Double> chances) {
        Map<Fault.Family, Double> families = new EnumMap<>(Fault.Family.class);
        chances.forEach((candidate, p) -> families.merge(candidate.fault().family(), p, Double::sum));
        return families;
    }

    static String name(EngineState state) {
        return switch (state) {
            case OK -> "nothing engine-wide";
            case RINGS_ALL -> "rings tired all round";
            case CAM_TIMING -> "cam timing out";
            case TEST_SPOILED -> "compression test spoiled";
        };
    }

    /** {@code 65 of 100}; the ends are never said to be certain. */
    static String chance(double p) {
        if (p > 0.995) {
            return "more than 99 of 100";
        }
        return p < 0.005 ? "less than 1 of 100" : Math.round(100 * p) + " of 100";
    }
}
