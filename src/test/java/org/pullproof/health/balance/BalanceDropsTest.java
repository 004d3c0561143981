package org.pullproof.health.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.health.balance.BalanceDrops.Limits;
import org.pullproof.health.balance.BalanceDrops.Pull;

/** The rule is judgement over common practice, no source; the figures are worked by hand. */
class BalanceDropsTest {
    private static final Limits LIMITS = new Limits(15, 3, 25);

    private static BalanceDrops drops(String... cylinders) {
        TreeMap<Integer, List<Double>> rounds = new TreeMap<>();
        for (int i = 0; i < cylinders.length; i++) {
            rounds.put(
                    i + 1,
                    Arrays.stream(cylinders[i].split(" ", -1))
                            .map(Double::valueOf)
                            .toList());
        }
        return new BalanceDrops(rounds);
    }

    @Test
    void theMeanIsTakenOverTheRounds() {
        assertThat(drops("70 74", "60", "65").means()).containsEntry(1, 72.0);
    }

    @Test
    void sharesSumToAHundred() {
        BalanceDrops drops = drops("62", "58", "65");
        assertThat(drops.sharePercent(1).orElseThrow()
                        + drops.sharePercent(2).orElseThrow()
                        + drops.sharePercent(3).orElseThrow())
                .isCloseTo(100, within(1e-12));
    }

    /** Squares about the means: 2·(1²) + 2·(2²) = 10 over 2 degrees of freedom. */
    @Test
    void scatterIsPooledFromTheRepeats() {
        assertThat(drops("69 71", "68 72").repeatScatter().orElseThrow()).isCloseTo(Math.sqrt(5), within(1e-12));
    }

    @Test
    void withoutRepeatsThereIsNoScatterOfRepeats() {
        assertThat(drops("62", "58", "65").repeatScatter()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"6, NONE", "29, NONE", "31, WEAK", "95, WEAK", "110, LEVEL", "130, LEVEL"})
    void aDropIsJudgedAgainstTheMedianOfTheOthers(String drop, Pull pull) {
        assertThat(drops("118", "121", drop, "115").judge(3, LIMITS)).isEqualTo(pull);
    }

    @Test
    void unevenOthersMakeTheRuleLessStrict() {
        assertThat(drops("60", "66", "48", "70", "54").judge(3, LIMITS)).isEqualTo(Pull.LEVEL);
        assertThat(drops("60", "61", "48", "60", "59").judge(3, LIMITS)).isEqualTo(Pull.WEAK);
    }

    @Test
    void scatteringRepeatsMakeTheRuleLessStrict() {
        assertThat(drops("80 40", "45 75", "38 62", "78 42").judge(3, LIMITS)).isEqualTo(Pull.LEVEL);
        assertThat(drops("60 60", "60 60", "50 50", "60 60").judge(3, LIMITS)).isEqualTo(Pull.WEAK);
    }

    @Test
    void twoCylindersSayNothingOfEachOther() {
        assertThat(drops("60", "5").judge(2, LIMITS)).isEqualTo(Pull.NOT_JUDGED);
    }
}
