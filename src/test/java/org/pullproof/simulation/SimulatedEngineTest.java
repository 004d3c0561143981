package org.pullproof.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class SimulatedEngineTest {
    private static final double KPA_A_PSI = 6.894757;

    /** 0.040 in against 0.040 in at 80 psi: 61.767 psi, by isentropic flow through two nozzles (NACA 1135; FAA AC 43.13-1B). */
    @Test
    void anEqualHoleHoldsWhatTwoNozzlesInARowHold() {
        double orificeMm = 1.016;
        SimulatedCylinder equal = SimulatedCylinder.sound(Math.PI / 4 * orificeMm * orificeMm);
        double held = engine(equal).held(equal, 80 * KPA_A_PSI, orificeMm);
        assertThat(held / KPA_A_PSI).isCloseTo(61.767, within(0.1));
    }

    /** A sound engine of ratio 8.5 cranks to 140 to 175 psi: common practice, no source. */
    @Test
    void aSoundEngineOfEightAndAHalfCranksToAnOrdinaryPressure() {
        SimulatedCylinder sound = SimulatedCylinder.sound(0.2);
        assertThat(engine(sound).cranked(sound, 6) / KPA_A_PSI).isBetween(140.0, 175.0);
    }

    @Test
    void oilHelpsAtRingsAndNotAtAValve() {
        SimulatedCylinder rings = SimulatedCylinder.wornRings(3);
        SimulatedCylinder valve = SimulatedCylinder.leakingExhaustValve(3);
        SimulatedEngine engine = engine(rings);
        assertThat(engine.cranked(rings.oiled(), 6)).isGreaterThan(1.08 * engine.cranked(rings, 6));
        assertThat(engine.cranked(valve.oiled(), 6)).isLessThan(1.02 * engine.cranked(valve, 6));
    }

    @Test
    void aLeakShowsInEveryTest() {
        SimulatedCylinder sound = SimulatedCylinder.sound(0.2);
        SimulatedCylinder worn = SimulatedCylinder.wornRings(3);
        SimulatedEngine engine = engine(sound);
        assertThat(engine.cranked(worn, 6)).isLessThan(0.9 * engine.cranked(sound, 6));
        assertThat(engine.held(worn, 600, 1)).isLessThan(0.5 * engine.held(sound, 600, 1));
        assertThat(engine.drop(worn, 70)).isLessThan(0.95 * engine.drop(sound, 70));
    }

    private static SimulatedEngine engine(SimulatedCylinder cylinder) {
        return new SimulatedEngine(0.7, 7.1, 101.3, List.of(cylinder));
    }
}
