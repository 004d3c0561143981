package org.pullproof.worth.question;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.pullproof.health.AirPlace;
import org.pullproof.health.TestKind;

/**
 * Names of tests and of what they may find. The results of a test are the classes that {@code health.faults.TestOutcomes} counts, in
 * the same order; classes of one name are one result.
 */
final class TestNames {
    private static final int LEAK_ZONES = 5;
    private static final int TIGHT_ZONES = 2;

    private TestNames() {}

    static String name(TestKind test, List<Integer> cylinders, int all) {
        String words = test.words().toLowerCase(java.util.Locale.ROOT);
        if (cylinders.size() == all) {
            return words + ", all cylinders";
        }
        return cylinders.size() == 1 ? words + ", cylinder " + cylinders.get(0) : words + ", the other cylinders";
    }

    /** The test of the whole engine, as the negotiation and the paragraph name it. */
    static String ofWholeEngine(TestKind test) {
        return switch (test) {
            case OIL_PRESSURE -> "oil pressure by a mechanical gauge";
            case OBSERVATION -> "listening for a deep knock at 2,500 rpm";
            case FILTER_CUT -> "cutting the oil filter open";
            case COOLANT_GAS -> "coolant-gas test";
            case VACUUM -> "vacuum held at 2,500 rpm";
            default -> test.words().toLowerCase(java.util.Locale.ROOT);
        };
    }

    /** Classes by the name of their result, in order. */
    static Map<String, List<Integer>> results(TestKind test, int classes) {
        Map<String, List<Integer>> results = new LinkedHashMap<>();
        for (int outcome = 0; outcome < classes; outcome++) {
            results.computeIfAbsent(result(test, outcome), name -> new ArrayList<>())
                    .add(outcome);
        }
        return results;
    }

    private static String result(TestKind test, int outcome) {
        return switch (test) {
            case LASH -> outcome == 0 ? "out of its range" : "in its range";
            case COIL_SWAP -> outcome == 0 ? "the fault moves with the coil" : "the fault stays";
            case RUNNING_COMPRESSION -> outcome == 0 ? "low while running" : "level while running";
            case BORESCOPE ->
                List.of("burnt edge", "mark on the bore or the piston", "clean").get(outcome);
            case LEAKDOWN -> leakdown(outcome);
            case COMPRESSION_DRY -> outcome < 3 ? "level with the others" : "low";
            case COMPRESSION_WET -> outcome < 3 ? "hardly rises with oil" : "rises with oil";
            case BALANCE -> outcome < 3 ? "drops too little" : "drops like the others";
            default -> test.words() + " " + (outcome + 1);
        };
    }

    /** Under 25 % whatever is heard, else where the air is heard. */
    private static String leakdown(int outcome) {
        if (outcome % LEAK_ZONES < TIGHT_ZONES) {
            return "under 25 %";
        }
        int air = outcome / LEAK_ZONES;
        return air == 0
                ? "leaks, nothing heard"
                : "leaks to the "
                        + List.copyOf(EnumSet.allOf(AirPlace.class))
                                .get(air - 1)
                                .key();
    }
}
