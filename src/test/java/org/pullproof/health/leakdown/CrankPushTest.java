package org.pullproof.health.leakdown;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.engine.CrankGeometry;

class CrankPushTest {
    private final CrankPush push = new CrankPush(new CrankGeometry(0.088, 0.145), 0.1016);

    /** Worked by hand from T = p A r sin θ (1 + …): about 56 N·m at 10° and 109 N·m at 20°, common practice, no source. */
    @ParameterizedTest
    @CsvSource({"10, 56", "20, 109", "-10, -56"})
    void airOffTopDeadCentreTurnsTheCrank(double degrees, double torque) {
        assertThat(push.torque(690e3, degrees)).isCloseTo(torque, within(0.7));
    }

    @Test
    void airAtTopDeadCentreDoesNotTurnTheCrank() {
        assertThat(push.torque(690e3, 0)).isZero();
    }
}
