package org.pullproof.health.faults;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Tests without physics here, each with a few outcomes: lash, coil swap, running compression (0 positive, 1 negative), borescope (0
 * burnt edge, 1 mark on bore or piston, 2 clean). Their chances are judgement, section 7 of the method.
 */
public final class FurtherTests {
    public static final int POSITIVE = 0;
    public static final int NEGATIVE = 1;

    private static final String ELSE = "else";

    private final FaultConstants.FurtherTests constants;

    FurtherTests(FaultConstants.FurtherTests constants) {
        this.constants = constants;
    }

    /** How many outcomes a test has. */
    public static int outcomes(Part part) {
        return part == Part.BORESCOPE ? 3 : 2;
    }

    /** What a word of the test means; empty for a figure, and for a word that means nothing here. */
    public static Optional<Integer> outcome(Part part, String word) {
        return switch (part.test().key() + " " + word) {
            case "lash tight", "lash loose", "coil-swap moved", "borescope burnt-edge" -> Optional.of(POSITIVE);
            case "lash in-spec", "coil-swap stayed", "borescope bore-mark", "borescope piston-damage" ->
                Optional.of(NEGATIVE);
            case "borescope clean" -> Optional.of(2);
            default -> Optional.empty();
        };
    }

    /** P(outcome | fault). */
    double chance(Part part, int outcome, Fault fault) {
        if (part == Part.BORESCOPE) {
            return byFault(constants.borescope(), fault).get(outcome);
        }
        double positive = byFault(constants.positive().getOrDefault(part.test().key(), Map.of()), fault);
        return outcome == POSITIVE ? positive : 1 - positive;
    }

    /** Coolant gas belongs to the engine, yet is worth something to a cylinder. */
    double coolantGasPositive(Fault fault) {
        return byFault(constants.positive().getOrDefault("coolant-gas", Map.of()), fault);
    }

    private static <T> T byFault(Map<String, T> values, Fault fault) {
        T value = values.get(fault.key());
        T other = value == null ? values.get(ELSE) : value;
        if (other == null) {
            throw new IllegalArgumentException("The constants of a test lack \"" + ELSE + "\": " + values.keySet());
        }
        return other;
    }

    /** Product over the outcomes found. */
    double chance(Map<Part, Integer> found, Fault fault) {
        double product = 1;
        for (Part part : List.of(Part.LASH, Part.COIL_SWAP, Part.BORESCOPE, Part.RUNNING)) {
            Integer outcome = found.get(part);
            product *= outcome == null ? 1 : chance(part, outcome, fault);
        }
        return product;
    }
}
