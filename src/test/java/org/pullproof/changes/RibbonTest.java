package org.pullproof.changes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.units.Sentence;

class RibbonTest {
    /** Upper 5 % points of Student's t: NIST/SEMATECH e-Handbook of Statistical Methods, table 1.3.6.7.2. */
    @ParameterizedTest
    @CsvSource({"4, 2.132", "10, 1.812", "30, 1.697"})
    void theRibbonIsTheScatterTimesStudentsT(double degreesOfFreedom, double t) {
        assertThat(ledger(OptionalDouble.of(0.5), degreesOfFreedom)
                        .ribbonPercent()
                        .orElseThrow())
                .isCloseTo(0.5 * t, within(0.0005));
    }

    @Test
    void withoutPullsThereIsNoRibbon() {
        assertThat(ledger(OptionalDouble.empty(), 0).ribbonPercent()).isEmpty();
    }

    private static ChangeLedger ledger(OptionalDouble scatter, double degreesOfFreedom) {
        return new ChangeLedger(
                new Sentence(""),
                scatter,
                OptionalDouble.empty(),
                degreesOfFreedom,
                false,
                List.of(),
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                Map.of());
    }
}
