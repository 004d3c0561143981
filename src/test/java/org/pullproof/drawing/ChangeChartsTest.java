package org.pullproof.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.pullproof.changes.Change;
import org.pullproof.changes.ChangeLedger;
import org.pullproof.changes.CurveBand;
import org.pullproof.changes.Sweep;
import org.pullproof.changes.Sweep.Level;
import org.pullproof.changes.Sweep.Response;
import org.pullproof.engine.Setup;
import org.pullproof.units.Sentence;
import org.pullproof.units.Unit;

class ChangeChartsTest {
    @Test
    void aSweepShowsBestUseKnockAndWhatIsAsGood() {
        Picture chart = new Picture(SweepChart.of(sweep(OptionalDouble.of(32.5)), 390, 240));

        assertThat(chart.words())
                .contains("best 33.6°", "use 31°", "knock", "26°", "38°")
                .anyMatch(words -> words.startsWith("within 0.5 % of the top: "));
        chart.hasNothingOutside();
    }

    @Test
    void withoutAProvedPeakNoIntervalIsDrawn() {
        Picture chart = new Picture(SweepChart.of(sweep(OptionalDouble.empty()), 390, 240));

        assertThat(chart.words()).contains("no peak proved yet").noneMatch(words -> words.startsWith("best"));
    }

    @Test
    void everyPullOfASweepIsARing() {
        Picture chart = new Picture(SweepChart.of(sweep(OptionalDouble.of(32.5)), 390, 240));

        assertThat(chart.all(Shape.Circle.class).stream().filter(circle -> circle.radius() == 3.2))
                .hasSize(10);
    }

    @Test
    void aClaimedRegionIsADimensionLineInWords() {
        Picture chart = new Picture(BandChart.of(band(List.of(new CurveBand.Region(3400, 4200, 1))), 390, 240));

        assertThat(chart.words()).contains("gained at least from 3,400 to 4,200", "rpm");
        chart.hasNothingOutside();
    }

    @Test
    void aDifferenceThatShowsAtNoSpeedSaysSo() {
        Picture chart = new Picture(BandChart.of(band(List.of()), 390, 240));

        assertThat(chart.words()).contains("at no speed alone");
    }

    @Test
    void theTreeHangsEachSetupBelowTheOneItWasMadeFrom() {
        Picture tree = new Picture(SetupTree.of(
                List.of(Setup.named("a", "base"), Setup.named("b", "timing"), Setup.named("c", "jets")),
                List.of(step("a", "b"), step("b", "a"), step("a", "c")),
                "c",
                nothingJudged(),
                390));

        assertThat(tree.text("timing").x())
                .isEqualTo(tree.text("jets").x())
                .isGreaterThan(tree.text("base").x());
        assertThat(tree.words()).contains("the engine is in it now");
        tree.hasNothingOutside();
    }

    private static Sweep sweep(OptionalDouble low) {
        List<Level> levels = IntStream.of(26, 29, 32, 35, 38)
                .mapToObj(degrees -> new Level(
                        "t" + degrees, degrees, List.of(percent(degrees) - 0.2, percent(degrees) + 0.2), degrees == 38))
                .toList();
        List<Response> response = IntStream.rangeClosed(26, 38)
                .mapToObj(degrees ->
                        new Response(degrees, percent(degrees), percent(degrees) - 0.3, percent(degrees) + 0.3))
                .toList();
        return new Sweep(
                "timing",
                Unit.DEGREE,
                33.6,
                low,
                low.isPresent() ? OptionalDouble.of(34.7) : low,
                OptionalDouble.of(31),
                OptionalDouble.empty(),
                levels,
                response,
                "");
    }

    private static double percent(double degrees) {
        return -0.055 * (degrees - 33.6) * (degrees - 33.6);
    }

    private static CurveBand band(List<CurveBand.Region> regions) {
        return new CurveBand(
                IntStream.rangeClosed(12, 30)
                        .mapToObj(i -> new CurveBand.Point(200 * i, 1, -0.5, 2.5))
                        .toList(),
                regions);
    }

    private static Change step(String from, String to) {
        return new Change(from, to, "", LocalDateTime.of(2026, 6, 14, 13, 40), Optional.empty(), Set.of());
    }

    private static ChangeLedger nothingJudged() {
        return new ChangeLedger(
                new Sentence("None."),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0,
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
