package org.pullproof.ui.health;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pullproof.health.HealthFindings;
import org.pullproof.health.TestKind;
import org.pullproof.health.Words;

/**
 * A test of the whole engine in the strip below the cylinders.
 *
 * @param test which
 * @param name what people call it
 * @param value what was read last, or {@code –}
 * @param known whether it was read
 * @param hint what may be typed
 */
public record WholeEngine(TestKind test, String name, String value, boolean known, String hint) {
    private static final List<TestKind> STRIP = List.of(
            TestKind.OIL_PRESSURE, TestKind.VACUUM, TestKind.OBSERVATION, TestKind.COOLANT_GAS, TestKind.FILTER_CUT);

    /** Whether this test has a cell of its own in the strip. */
    static boolean onStrip(TestKind test) {
        return STRIP.contains(test);
    }

    static List<WholeEngine> of(HealthFindings findings) {
        List<WholeEngine> strip = new ArrayList<>();
        STRIP.forEach(test -> strip.add(cell(test, findings)));
        return strip;
    }

    private static WholeEngine cell(TestKind test, HealthFindings findings) {
        Optional<String> last = findings.engineSigns().stream()
                .filter(sign -> sign.test() == test)
                .reduce((before, after) -> after)
                .map(ReadingAsTyped::value);
        return new WholeEngine(test, test.words(), last.orElse(Tile.NOT_MEASURED), last.isPresent(), hint(test));
    }

    private static String hint(TestKind test) {
        return switch (test) {
            case OIL_PRESSURE -> "a pressure at hot idle";
            case VACUUM -> "a vacuum, or " + String.join(", ", Words.of(test));
            default -> String.join(", ", Words.of(test));
        };
    }
}
