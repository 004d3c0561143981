package org.pullproof.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.drawing.PowerChart.Content;
import org.pullproof.drawing.Shape.Path;
import org.pullproof.drawing.Shape.Text;
import org.pullproof.dyno.DynoFindings;
import org.pullproof.dyno.PullFindings;
import org.pullproof.units.Figures;
import org.pullproof.units.UnitSystem;
import org.pullproof.weather.Standard;

class PowerChartTest {

    @ParameterizedTest
    @CsvSource({"1, 1, 562, 488", "3, 3, 562, 488", "7, 2, 562, 420", "9, 4, 1000, 600", "5, 2, 420, 340"})
    void nothingStandsOutsideAndNoWordsStandOnWords(int setups, int pulls, double width, double height) {
        Picture chart = new Picture(PowerChart.of(content(setups, pulls), width, height));

        chart.hasNothingOutside();
        chart.hasNoWordsOnWords();
    }

    @ParameterizedTest
    @CsvSource({"3", "6", "9"})
    void namesAtTheLineEndsStandAtLeast15PxApart(int setups) {
        Picture chart = new Picture(PowerChart.of(content(setups, 2), 562, 488));

        List<Double> places = chart.texts().stream()
                .filter(text ->
                        text.words().startsWith("timing") || text.words().equals("base"))
                .map(Text::y)
                .sorted()
                .toList();
        for (int i = 1; i < places.size(); i++) {
            assertThat(places.get(i) - places.get(i - 1)).isGreaterThanOrEqualTo(15 - 1e-6);
        }
    }

    /** 161 points on some 100 px: none is drawn that shows nothing, and the line still reaches from end to end. */
    @Test
    void aSmallPictureOfManyPointsIsDrawnDotByDot() {
        Picture wide = new Picture(PowerChart.of(content(1, 1), 4000, 2000));
        Picture small = new Picture(PowerChart.of(content(1, 1), 200, 200));

        Path whole = curves(wide, 0.6).get(0);
        Path thinned = curves(small, 0.6).get(0);
        assertThat(whole.points()).hasSize(161);
        assertThat(thinned.points().size()).isLessThan(161);
        assertThat(width(thinned) / 200).isGreaterThan(0.2);
        for (int i = 2; i < thinned.points().size() - 1; i++) {
            Shape.Point before = thinned.points().get(i - 1);
            Shape.Point at = thinned.points().get(i);
            assertThat(Math.max(at.x() - before.x(), 2 * Math.abs(at.y() - before.y())))
                    .isGreaterThanOrEqualTo(1 - 1e-9);
        }
    }

    private static double width(Path path) {
        return path.points().get(path.points().size() - 1).x()
                - path.points().get(0).x();
    }

    @Test
    void aTitleSaysWhatUnitStandardAndSmoothing() {
        Picture chart = new Picture(PowerChart.of(content(2, 2), 562, 488));

        assertThat(chart.words())
                .contains(
                        "Power at the wheels, hp",
                        "SAE J1349 · smoothed over 120 rpm",
                        "Torque at the wheels, lb-ft",
                        "Difference from base, %");
    }

    @Test
    void powerThatHasNoAirIsSaidToBeNotCorrected() {
        PullFindings bare = Pulls.pull(0, 1, 2000, 5200, 1, Optional.empty());
        PullFindings airless = new PullFindings(
                bare.pull(),
                bare.name(),
                bare.trace(),
                bare.curve(),
                Optional.empty(),
                Optional.empty(),
                bare.peakMeasuredKw(),
                bare.peakMeasuredRpm(),
                bare.bandMeasuredKw(),
                bare.flags());

        Picture chart = new Picture(PowerChart.of(content(Pulls.findings(List.of(airless))), 562, 488));

        assertThat(chart.words()).contains("not corrected · smoothed over 120 rpm");
    }

    @Test
    void onlyTheChosenSetupIsBlueAndWide() {
        Picture chart = new Picture(PowerChart.of(content(3, 1), 562, 488));

        assertThat(curves(chart, 2.2)).hasSize(3).allMatch(path -> inkOf(path) == Ink.BLUE);
        assertThat(curves(chart, 1.5)).hasSize(6).allMatch(path -> inkOf(path) == Ink.INK);
    }

    @Test
    void theFirstSetupIsUnbrokenAndTheOthersAreTold() {
        assertThat(LineStyle.of(0, false).dash()).isEmpty();
        assertThat(LineStyle.of(1, false).dash()).containsExactly(11.0, 4.0);
        assertThat(LineStyle.of(5, false).dash()).containsExactly(9.0, 3.0, 2.0, 3.0, 2.0, 3.0);
    }

    @Test
    void aSpeedThatOnePullDoesNotCoverHasNoLine() {
        List<PullFindings> pulls = List.of(
                Pulls.pull(0, 1, 2000, 5200, 1, Optional.empty()), Pulls.pull(0, 2, 2400, 4800, 1, Optional.empty()));
        SetupCurves curves = SetupCurves.of(Pulls.findings(pulls), Pulls.setups(1));

        assertThat(curves.setups().get(0).mean().firstKey()).isEqualTo(2400);
        assertThat(curves.setups().get(0).mean().lastKey()).isEqualTo(4800);
    }

    @Test
    void anExcludedPullIsNotDrawn() {
        List<PullFindings> pulls = new ArrayList<>();
        pulls.add(Pulls.pull(0, 1, 2000, 5200, 1, Optional.empty()));
        pulls.add(Pulls.pull(0, 2, 2000, 5200, 2, Optional.of("belt slipped")));

        SetupCurves curves = SetupCurves.of(Pulls.findings(pulls), Pulls.setups(1));

        assertThat(curves.setups().get(0).pulls()).hasSize(1);
    }

    @Test
    void theBandIsADimensionLineWithWords() {
        Picture chart = new Picture(PowerChart.of(content(1, 1), 562, 488));

        assertThat(chart.words()).contains("band power, 2,600 to 5,000");
    }

    @Test
    void withoutPullsTheAxesAreDashedAndSayWhatWillStandThere() {
        Picture chart = new Picture(PowerChart.of(content(Pulls.findings(List.of())), 562, 488));

        assertThat(chart.words()).contains("each setup one line, named at its end");
        assertThat(chart.all(Path.class))
                .allMatch(path -> path.stroke().filter(s -> !s.dash().isEmpty()).isPresent());
    }

    private static Ink inkOf(Path path) {
        return path.stroke().orElseThrow().ink();
    }

    private static List<Path> curves(Picture chart, double width) {
        return chart.all(Path.class).stream()
                .filter(path -> path.stroke().filter(s -> s.width() == width).isPresent())
                .toList();
    }

    private static Content content(int setups, int pulls) {
        return content(Pulls.findings(setups, pulls));
    }

    private static Content content(DynoFindings findings) {
        return new Content(
                findings,
                Pulls.setups(9),
                Optional.of("s1"),
                OptionalDouble.of(0.6),
                Standard.SAE_J1349,
                new Figures(UnitSystem.US));
    }
}
