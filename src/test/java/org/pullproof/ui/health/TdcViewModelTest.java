package org.pullproof.ui.health;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.session.Edit;
import org.pullproof.ui.SheetFixture;
import org.pullproof.ui.UiFixture;

class TdcViewModelTest {
    private static TdcViewModel of(String profile) {
        return HealthPictures.tdcModel(SheetFixture.model(
                UiFixture.after(
                        UiFixture.open(), new Edit("Engine", now -> now.withProfile(SheetFixture.profile(profile)))),
                UiFixture::appraise));
    }

    /** Intervals 150° and 90° in turn: common practice, no source. */
    @ParameterizedTest
    @CsvSource({"1, 6, 150, 75", "6, 5, 90, 45", "2, 1, 90, 45"})
    void anOddFireEngineIsTurnedByItsList(int now, int next, int crank, int rotor) {
        TdcViewModel tdc = of("v6-odd-fire-90");
        tdc.stand(now);

        assertThat(tdc.answer().plain())
                .isEqualTo("Cylinder " + now + " is at TDC. For " + next + ", turn the crank " + crank
                        + "° clockwise; the rotor moves " + rotor + "°.");
    }

    @Test
    void withoutADistributorTheWhistleTells() {
        TdcViewModel tdc = of("i4-coil-on-plug");
        tdc.stand(3);

        assertThat(tdc.answer().plain()).endsWith("180° clockwise; the whistle in plug hole 4 sounds on the way.");
        assertThat(tdc.lines()).extracting(TdcViewModel.Line::name).noneMatch(name -> name.startsWith("Rotor"));
    }

    @Test
    void turnedLeadsOnAndBeforeLeadsBack() {
        TdcViewModel tdc = of("v6-odd-fire-90");

        tdc.turned();
        assertThat(tdc.nowProperty().get()).isEqualTo(6);
        tdc.before();
        tdc.before();

        assertThat(tdc.nowProperty().get()).isEqualTo(2);
    }

    @Test
    void theTableStandsInFiringOrder() {
        assertThat(of("v6-odd-fire-90").lines())
                .extracting(TdcViewModel.Line::words)
                .startsWith(
                        java.util.List.of("start", "150°", "90°", "150°", "90°", "150°"),
                        java.util.List.of("0°", "150°", "240°", "30°", "120°", "270°"),
                        java.util.List.of("0°", "75°", "120°", "195°", "240°", "315°"));
    }

    /** Worked by hand from T = p A r sin θ (1 + r cos θ/√(l² − r² sin² θ)): 80 psi, bore 95, stroke 86, rod 152 mm. */
    @Test
    void thePushOnTheCrankIsToldAtTenDegrees() {
        assertThat(of("v6-odd-fire-90").pushes())
                .contains(new TdcViewModel.Push("10°", "28\u00a0lb-ft", "37\u00a0N·m"));
    }

    @Test
    void anEngineWithFewerCylindersShowsItsFirst() {
        TdcViewModel tdc = of("i4-coil-on-plug");

        tdc.stand(8);

        assertThat(tdc.nowProperty().get()).isEqualTo(1);
    }

    @Test
    void cautionsStandBeforeAirGoesIn() {
        assertThat(of("i4-coil-on-plug").cautions())
                .anyMatch(caution -> caution.contains("no tool on the crank bolt"))
                .anyMatch(caution -> caution.contains("take precedence"));
    }
}
