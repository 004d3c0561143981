package org.pullproof.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.drawing.PowerChart.Content;
import org.pullproof.drawing.Shape.Circle;
import org.pullproof.units.Figures;
import org.pullproof.units.UnitSystem;
import org.pullproof.weather.Standard;

class CrosshairTest {
    private static final double WIDTH = 562;
    private static final double HEIGHT = 488;

    @ParameterizedTest
    @CsvSource({"2100", "3600", "5150"})
    void everySetupHasADotInEveryPanelAndTheBoxStaysInside(int rpm) {
        Picture layer = new Picture(Crosshair.at(panels(3, ChartLook.whole()), rpm, WIDTH, HEIGHT));

        assertThat(layer.all(Circle.class)).hasSize(9);
        layer.hasNothingOutside();
        layer.hasNoWordsOnWords();
    }

    /**
     * The invented parabola at its top, 4,600 rpm: 150 kW × 1.03 × level, levels 1.001 and 1.003 for one pull each, in hp of 0.745700 kW
     * (9.80665 m/s² × 75.9864… kgf·m/s; 550 ft·lbf/s of NIST SP 811, from memory).
     */
    @Test
    void theBoxReadsWhatTheCurvesHold() {
        Picture layer = new Picture(Crosshair.at(panels(2, ChartLook.whole()), 4600, WIDTH, HEIGHT));

        assertThat(layer.words()).contains("4,600\u00a0rpm", "hp", "lb-ft", "from base", "base", "timing 31°");
        assertThat(layer.words()).contains("207.4", "207.8", "+0.2\u00a0%");
    }

    @Test
    void thePointUnderTheMouseIsAStepOfTheCurves() {
        ChartPanels panels = panels(1, ChartLook.whole());
        double right = new ChartPlan(panels, WIDTH, HEIGHT).right();

        assertThat(Crosshair.rpmAt(panels, ChartPlan.LEFT, WIDTH, HEIGHT)).hasValue(2000);
        assertThat(Crosshair.rpmAt(panels, right, WIDTH, HEIGHT)).hasValue(5200);
        assertThat(Crosshair.rpmAt(panels, (ChartPlan.LEFT + right) / 2, WIDTH, HEIGHT))
                .hasValue(3600);
        assertThat(Crosshair.rpmAt(panels, 2, WIDTH, HEIGHT)).isEmpty();
    }

    @Test
    void outOfSightThereIsNothing() {
        ChartLook zoomed = new ChartLook(Optional.of(new Speeds(3000, 4000)), List.of(), List.of());

        assertThat(Crosshair.at(panels(2, zoomed), 4600, WIDTH, HEIGHT).shapes())
                .isEmpty();
    }

    @Test
    void zoomedOnlyTheSpeedsInSightAreDrawn() {
        ChartLook zoomed = new ChartLook(Optional.of(new Speeds(3000, 4000)), List.of(), List.of("Grey coupé"));
        ChartPanels panels = panels(2, zoomed);
        Picture chart = new Picture(PowerChart.of(panels, WIDTH, HEIGHT));

        chart.hasNothingOutside();
        chart.hasNoWordsOnWords();
        assertThat(panels.panels().get(0).lines().get(0).values().firstKey()).isEqualTo(3000);
        assertThat(panels.panels().get(0).lines().get(0).values().lastKey()).isEqualTo(4000);
        assertThat(chart.words()).contains("Grey coupé");
    }

    @ParameterizedTest
    @CsvSource({
        // about, factor, from, to
        "3600, 0.5, 2800, 4400",
        "2000, 0.5, 2000, 3600",
        "3600, 4, 2000, 5200",
        "3600, 0.001, 3500, 3700"
    })
    void zoomKeepsTheSpeedInItsPlaceAndStaysInside(int about, double factor, int from, int to) {
        Speeds whole = new Speeds(2000, 5200);

        assertThat(whole.scaled(about, factor, whole)).isEqualTo(new Speeds(from, to));
    }

    private static ChartPanels panels(int setups, ChartLook look) {
        Content content = new Content(
                Pulls.findings(setups, 1),
                Pulls.setups(9),
                Optional.of("s1"),
                OptionalDouble.of(0.6),
                Standard.SAE_J1349,
                new Figures(UnitSystem.US));
        return ChartPanels.of(content, look);
    }
}
