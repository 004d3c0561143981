package org.pullproof.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.pullproof.changes.Call;
import org.pullproof.changes.ChangeLedger;
import org.pullproof.changes.ChangeLedger.Residual;
import org.pullproof.changes.JudgedChange;
import org.pullproof.changes.Settling;
import org.pullproof.drawing.Shape.Circle;
import org.pullproof.drawing.Shape.Line;
import org.pullproof.units.Sentence;

/** The strips of the sheets Changes and Worth it. */
class StripsTest {

    @ParameterizedTest
    @CsvSource({"-0.5, 0.4, 1.3", "2.2, 3.1, 4.0", "-30, -20, -10", "-0.02, 0, 0.02"})
    void anIntervalStaysInsideItsStrip(double low, double estimate, double high) {
        JudgedChange change = change(low, estimate, high, Call.GAIN);

        IntervalStrip strip = new IntervalStrip(List.of(change), 1, 312);

        new Picture(strip.strip(change, 45)).hasNothingOutside();
        new Picture(strip.axis(16)).hasNothingOutside();
        new Picture(strip.axis(16)).hasNoWordsOnWords();
    }

    @Test
    void theFiguresOfAnIntervalStandAtItsEndsAndTheEstimateBelow() {
        JudgedChange change = change(2.2, 3.1, 4.0, Call.GAIN);

        Picture strip = new Picture(new IntervalStrip(List.of(change), 1, 312).strip(change, 45));

        assertThat(strip.words()).containsExactly("+2.2", "+4.0", "+3.1\u00a0%");
        assertThat(strip.text("+3.1\u00a0%").y())
                .isGreaterThan(strip.text("+2.2").y());
    }

    @Test
    void noCallHasAHollowDotAndSpoiledABrokenBar() {
        JudgedChange none = change(-0.5, 0.4, 1.3, Call.NO_CALL);
        JudgedChange spoiled = change(0.3, 2.6, 4.9, Call.SPOILED);
        IntervalStrip strips = new IntervalStrip(List.of(none, spoiled), 1, 312);

        assertThat(dot(strips, none).fill()).contains(Ink.SHEET);
        assertThat(dot(strips, change(1, 2, 3, Call.GAIN)).fill()).contains(Ink.INK);
        assertThat(new Picture(strips.strip(spoiled, 45)).all(Line.class))
                .anyMatch(line -> !line.stroke().dash().isEmpty());
    }

    @ParameterizedTest
    @EnumSource(Call.class)
    void everyCallHasAShapeThatStaysInItsField(Call call) {
        Picture mark = new Picture(CallMark.of(call));

        mark.hasNothingOutside();
        assertThat(CallMark.of(call).title()).isEqualTo(call.words());
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 0", "90, 180, 420", "4100, 6900, 11200", "10400, 11000, 11200"})
    void costsStayInsideTheirStrip(double low, double likely, double high) {
        MoneyStrip.Bar option = bar(low, likely, high);
        MoneyStrip strips = new MoneyStrip(List.of(option, bar(0, 1, 11200)), OptionalDouble.of(2500), "USD", 300);

        new Picture(strips.strip(option, 38)).hasNothingOutside();
        new Picture(strips.strip(option, 38)).hasNoWordsOnWords();
        new Picture(strips.axis(16)).hasNoWordsOnWords();
    }

    @Test
    void theBudgetIsARedDashedLine() {
        MoneyStrip.Bar option = bar(90, 180, 420);
        Picture strip =
                new Picture(new MoneyStrip(List.of(option), OptionalDouble.of(2500), "USD", 300).strip(option, 38));

        assertThat(strip.all(Line.class))
                .filteredOn(line -> line.stroke().ink() == Ink.RED)
                .singleElement()
                .matches(line -> !line.stroke().dash().isEmpty());
    }

    @Test
    void residualsFillTheDotsOfBaseAndNameTheDrift() {
        ChangeLedger ledger = ledger(List.of(
                new Residual("s0-1", "s0", 0.3, 0.1),
                new Residual("s1-1", "s1", -0.2, 0),
                new Residual("s0-2", "s0", -0.1, -0.1)));

        Picture chart = new Picture(ResidualChart.of(ledger, Pulls.setups(2), 410, 222));

        chart.hasNothingOutside();
        chart.hasNoWordsOnWords();
        assertThat(chart.all(Circle.class))
                .extracting(circle -> circle.fill().orElseThrow())
                .containsExactly(Ink.INK, Ink.SHEET, Ink.INK);
        assertThat(chart.words()).contains("drift −0.05\u00a0% a pull", "base");
    }

    @Test
    void residualsWithoutPullsSayWhatWillStandThere() {
        Picture chart = new Picture(ResidualChart.of(ledger(List.of()), List.of(), 410, 222));

        assertThat(chart.words()).containsExactly("a dot for each pull, in order");
    }

    private static ChangeLedger ledger(List<Residual> residuals) {
        return new ChangeLedger(
                new Sentence("None."),
                OptionalDouble.of(0.4),
                OptionalDouble.of(-0.05),
                5,
                false,
                List.of(),
                List.of(),
                Optional.empty(),
                residuals,
                List.of(),
                List.of(),
                Map.of());
    }

    private static Circle dot(IntervalStrip strips, JudgedChange change) {
        return new Picture(strips.strip(change, 45)).all(Circle.class).get(0);
    }

    private static MoneyStrip.Bar bar(double low, double likely, double high) {
        return new MoneyStrip.Bar("an option", low, likely, high);
    }

    private static JudgedChange change(double low, double estimate, double high, Call call) {
        return new JudgedChange(
                "base → timing",
                "s0",
                "s1",
                true,
                Optional.empty(),
                150,
                153,
                estimate,
                low,
                high,
                2,
                1,
                3,
                call,
                true,
                Settling.DONE,
                Optional.empty(),
                "a sentence");
    }
}
