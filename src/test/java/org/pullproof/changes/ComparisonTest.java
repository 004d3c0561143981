package org.pullproof.changes;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.pullproof.engine.Setup;

class ComparisonTest {
    /** Section 1 of the method: "B, C, D of A-B-C-A-D give B-A, C-B, D-A (first kind) and D-C (second)". */
    @Test
    void aSetupIsComparedWithItsOriginAndWithTheOneThatAppearedBeforeIt() {
        List<Comparison> pairs = Comparison.of(
                setups("A", "B", "C", "D"),
                List.of(step("A", "B"), step("B", "C"), step("C", "A"), step("A", "D")),
                List.of("A", "B", "C", "D"));
        assertThat(pairs).extracting(ComparisonTest::words).containsExactly("A>B!", "B>C!", "A>D!", "C>D");
    }

    @Test
    void theWayBackIsNoChange() {
        List<Comparison> pairs =
                Comparison.of(setups("A", "B"), List.of(step("A", "B"), step("B", "A")), List.of("A", "B"));
        assertThat(pairs).extracting(ComparisonTest::words).containsExactly("A>B!");
    }

    @Test
    void theWayBackIsNoChangeEvenWhenTheEarlierSetupIsPulledLater() {
        List<Comparison> pairs =
                Comparison.of(setups("A", "B"), List.of(step("A", "B"), step("B", "A")), List.of("B", "A"));
        assertThat(pairs).extracting(ComparisonTest::words).containsExactly("A>B!");
    }

    @Test
    void aRecordedStepWithoutPullsIsStillListed() {
        List<Comparison> pairs = Comparison.of(setups("A", "B"), List.of(step("A", "B")), List.of("A"));
        assertThat(pairs).extracting(ComparisonTest::words).containsExactly("A>B!");
    }

    private static String words(Comparison pair) {
        return pair.from() + ">" + pair.to() + (pair.recorded() ? "!" : "");
    }

    private static List<Setup> setups(String... ids) {
        return Stream.of(ids).map(id -> Setup.named(id, id)).toList();
    }

    private static Change step(String from, String to) {
        return new Change(from, to, "", LocalDateTime.of(2026, 6, 14, 13, 40), Optional.empty(), Set.of());
    }
}
