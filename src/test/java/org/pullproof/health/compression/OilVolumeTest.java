package org.pullproof.health.compression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.pullproof.engine.Geometry;

class OilVolumeTest {
    /** Square cylinder of 500.0 cm³ by hand: chamber 55.6 cm³ at 10 : 1; closing at bottom dead centre makes r_e = 10. */
    private static final Geometry HALF_LITRE = new Geometry(0.086, 0.086, 0.143, 10, 0, false);

    /**
     * By hand: V_s = 499.56 cm³, V_c = 55.506 cm³; with 5 cm³ of oil r_w = 550.06/50.506 = 10.8910;
     * (10.8910^1.25 − 1)/(10^1.25 − 1) = 18.7849/16.7828 = 1.1193.
     */
    @Test
    void fiveMillilitresRaiseATightCylinderByTwelvePercent() {
        assertThat(OilVolume.gainPercent(HALF_LITRE, 5e-6)).isCloseTo(11.9, within(0.1));
    }

    @Test
    void noOilRaisesNothing() {
        assertThat(OilVolume.gainPercent(HALF_LITRE, 0)).isZero();
    }

    @Test
    void oilThatFillsHalfTheChamberTellsNothingOfSealing() {
        assertThat(OilVolume.gainPercent(HALF_LITRE, 30e-6)).isInfinite();
    }
}
