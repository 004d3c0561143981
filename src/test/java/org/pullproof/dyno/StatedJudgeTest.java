package org.pullproof.dyno;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.dyno.StatedFinding.Call;
import org.pullproof.files.TradeConstants;
import org.pullproof.session.Judgement;
import org.pullproof.units.Figures;
import org.pullproof.units.UnitSystem;
import org.pullproof.weather.AirReading;
import org.pullproof.weather.Correction;
import org.pullproof.weather.Readings;
import org.pullproof.weather.Standard;

class StatedJudgeTest {
    private static final double HP = 0.7456998715822702;

    /** Reference air of J1349, so that corrected is measured. */
    private static final AirReading REFERENCE = Readings.air("2026-06-14T13:40", "99.00kPa", "25.0C", "0%");

    /**
     * The story of the seller's sheet: 248 hp J607 is 238.5 to 241.2 hp J1349, for the ratio of the two is 1.028 to 1.040 by air; with
     * another dyno's standard deviation of 4 % the 90 % interval is about ± 16 hp. The ratios are rounded there.
     */
    @Test
    void aSellersFigureBecomesARangeAndNothingLostIsShown() {
        StatedFinding found = judged("248hp sae-j607 wheels", 239.1, 240.0, 240.9);
        assertThat(found.range().orElseThrow().lowKw() / HP).isCloseTo(238.5, within(0.1));
        assertThat(found.range().orElseThrow().highKw() / HP).isCloseTo(241.2, within(0.1));
        assertThat(found.now().orElseThrow().kw() / HP).isCloseTo(240, within(0.01));
        assertThat(found.difference().orElseThrow().halfWidthKw() / HP).isCloseTo(16, within(0.3));
        assertThat(found.call()).isEqualTo(Call.NO_CALL);
        assertThat(found.sentence().plain()).contains("no call; nothing lost is shown");
    }

    /** Three values 0.9 apart: t(0.95, 2) 2.920 · 0.9/√3 = 1.517 (handbook table of t). */
    @Test
    void whatItMakesNowCarriesTheScatterOfItsPulls() {
        StatedFinding found = judged("248hp sae-j607 wheels", 239.1, 240.0, 240.9);
        assertThat(found.now().orElseThrow().halfWidthKw() / HP).isCloseTo(1.517, within(0.002));
    }

    /** Formula grid: 30 % at 25 °C and 95 kPa has J607 1.094841 and J1349 1.062115; so 248 hp becomes 240.59. */
    @Test
    void withTheAirOfTheSheetTheFigureIsRecomputed() {
        StatedFinding found = judged("248hp sae-j607 wheels 95.000kPa 25.0C 30.0%", 240.0);
        double middle = found.range().orElseThrow().middle() / HP;
        assertThat(middle).isCloseTo(248 * 1.062115 / 1.094841, within(0.02));
        assertThat(found.range().orElseThrow().highKw()
                        - found.range().orElseThrow().lowKw())
                .isLessThan(0.1);
        assertThat(found.sentence().plain()).contains("recomputed with the air of the sheet");
    }

    @Test
    void theSameStandardNeedsNoAirAndHasNoRange() {
        StatedFinding found = judged("248hp sae-j1349 wheels", 240.0);
        assertThat(found.range().orElseThrow().lowKw() / HP).isCloseTo(248, within(1e-6));
        assertThat(found.sentence().plain()).contains("On SAE J1349 that is 248.0\u00a0hp, the same standard");
    }

    @ParameterizedTest
    @CsvSource({"200, LOSS", "230, NO_CALL", "250, NO_CALL", "280, GAIN"})
    void onlyMoreThanTwoDynosDifferIsCalled(double now, Call call) {
        assertThat(judged("248hp sae-j607 wheels", now, now, now).call()).isEqualTo(call);
    }

    @Test
    void aFigureAtTheCrankIsNotHeldAgainstTheWheels() {
        StatedFinding found = judged("290hp sae-j607 crank", 240.0);
        assertThat(found.difference()).isEmpty();
        assertThat(found.call()).isEqualTo(Call.NO_CALL);
        assertThat(found.sentence().plain()).contains("Power at the crank is not compared with power at the wheels");
    }

    @Test
    void withWheelsOrCrankUnsaidEvenAWideDifferenceIsNoCall() {
        StatedFinding found = judged("290hp sae-j607", 240.0);
        assertThat(found.call()).isEqualTo(Call.NO_CALL);
        assertThat(found.sentence().plain()).contains("a figure at the crank would explain it");
    }

    @Test
    void whatTheSheetDoesNotSayIsNamed() {
        assertThat(judged("248hp", 240.0).missing())
                .satisfiesExactly(
                        standard -> assertThat(standard).contains("which standard"),
                        place -> assertThat(place).contains("at the wheels or at the crank"),
                        air -> assertThat(air).contains("in which air"));
        assertThat(judged("248hp", 240.0).range()).isEmpty();
    }

    @Test
    void withoutAPullThereIsOnlyTheRange() {
        StatedFinding found = judged("248hp sae-j607 wheels");
        assertThat(found.range()).isPresent();
        assertThat(found.difference()).isEmpty();
        assertThat(found.missing()).anyMatch(line -> line.contains("no pull with its air"));
    }

    private static StatedFinding judged(String stated, double... hp) {
        Dyno day = Dyno.day(REFERENCE);
        for (double each : hp) {
            day.pull("base", "13:45", each * HP);
        }
        return new DynoAssessor(new Correction(), new TradeConstants().pulls(Judgement.own()))
                .assess(
                        day.days(),
                        List.of(),
                        day.traces(),
                        Standard.SAE_J1349,
                        new DynoAssessor.Told(
                                Optional.empty(), Optional.empty(), Optional.of(StatedFigure.parse(stated))),
                        new Figures(UnitSystem.US))
                .stated()
                .orElseThrow();
    }
}
