package org.pullproof.ui.health;

import java.util.List;
import java.util.function.Function;
import org.pullproof.advice.Cautions;
import org.pullproof.health.TestKind;

/**
 * Cautions at the car.
 *
 * @param before all of a test, before its first reading
 * @param inHand the same in one line, while readings are taken
 */
public record FenderCautions(Function<TestKind, List<String>> before, Function<TestKind, String> inHand) {
    private static final String IN_HAND = "in-hand-";

    public static FenderCautions of(Cautions cautions) {
        return new FenderCautions(
                cautions::of, test -> cautions.of(IN_HAND + test.key()).get(0));
    }
}
