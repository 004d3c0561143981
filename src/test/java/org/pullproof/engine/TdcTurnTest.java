package org.pullproof.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.testing.Tools;

class TdcTurnTest {
    /** Intervals 150° and 90° in turn, order 1-6-5-4-3-2, of an odd-fire V6 of 90°: common practice, no source. */
    @ParameterizedTest
    @CsvSource({"1, 6, 150", "6, 5, 90", "5, 4, 150", "4, 3, 90", "3, 2, 150", "2, 1, 90"})
    void anOddFireEngineTurnsByItsListAndNeverBy120(int from, int to, int degrees) {
        assertThat(TdcTable.of(Tools.profile("v6-odd-fire-90")).turnFrom(from))
                .isEqualTo(new TdcTable.Turn(from, to, degrees));
    }

    /** A four of order 1-3-4-2 turns 180° from one to the next: Army TM 9-8000, page 2-18. */
    @ParameterizedTest
    @CsvSource({"1, 3", "3, 4", "4, 2", "2, 1"})
    void aFourTurnsHalfATurn(int from, int to) {
        assertThat(TdcTable.of(Tools.profile("i4-coil-on-plug")).turnFrom(from))
                .isEqualTo(new TdcTable.Turn(from, to, 180));
    }

    @Test
    void beforeTheFirstStandsTheLast() {
        assertThat(TdcTable.of(Tools.profile("i4-coil-on-plug")).before(1)).isEqualTo(2);
    }

    @Test
    void theRotorTurnsHalfAsFarAsTheCrank() {
        assertThat(TdcTable.of(Tools.profile("v6-odd-fire-90")).turnFrom(1).rotorDegrees())
                .isEqualTo(75);
    }

    @Test
    void anEngineWithoutADistributorIsFoundByWhistleOrCam() {
        assertThat(TopSigns.of(Tools.profile("i4-coil-on-plug"), 3))
                .hasSize(2)
                .anyMatch(sign -> sign.startsWith("Whistle: in plug hole 3"))
                .anyMatch(sign -> sign.startsWith("Cam:"));
    }

    @Test
    void anEngineWithADistributorIsFoundByItsRotor() {
        assertThat(TopSigns.of(Tools.profile("v8-distributor-order-b"), 5))
                .anyMatch(sign -> sign.contains("points at post 5"))
                .anyMatch(sign -> sign.contains("counterclockwise"));
    }
}
