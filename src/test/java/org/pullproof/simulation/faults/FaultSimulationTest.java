package org.pullproof.simulation.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A few invented engines in each build; many by the profile {@code simulation}. */
class FaultSimulationTest {
    private static final List<Score> SCORES = new FaultSimulation().scores(40, 1, Evidence.ALL);

    @Test
    void mostSingleFaultsAreNamedRight() {
        assertThat(FaultSimulation.percent(
                        FaultSimulation.only(SCORES, score -> score.kind().single()), Score::right))
                .isGreaterThan(75);
    }

    @Test
    void noSoundEngineIsCalledFaulty() {
        assertThat(FaultSimulation.only(SCORES, score -> score.trulySound() && score.engineCalled()))
                .isEmpty();
    }
}
