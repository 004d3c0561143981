package org.pullproof.dyno;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.files.TradeConstants;
import org.pullproof.session.Judgement;
import org.pullproof.units.Figures;
import org.pullproof.units.RpmRange;
import org.pullproof.units.UnitSystem;
import org.pullproof.weather.AirReading;
import org.pullproof.weather.Correction;
import org.pullproof.weather.Readings;
import org.pullproof.weather.Standard;

class DynoAssessorTest {
    private static final Optional<RpmRange> BAND = Optional.of(new RpmRange(2600, 5000));
    private static final AirReading AIR = Readings.air("2026-06-14T13:40", "99.0kPa", "25C", "0%");

    /** Grid of the formulas: 25 °C, 95 kPa, 30 % is 1.062115 for J1349; an hour later than the reference air above. */
    private static final AirReading LATER = Readings.air("2026-06-14T15:00", "95.000kPa", "25.0C", "30%");

    /** Reference air of J1349, 25 °C and 99 kPa dry: corrected is measured. */
    @Test
    void bandPowerInReferenceAirIsTheMeasuredOne() {
        PullFindings pull = only(Dyno.day(AIR).pull("base", "13:45", 150));
        assertThat(pull.bandMeasuredKw()).hasValue(150);
        assertThat(pull.bandCorrectedKw().orElseThrow()).isCloseTo(150, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"13:40, 1.0", "15:00, 1.062115", "16:00, 1.062115", "12:00, 1.0"})
    void onAReadingAndOutsideOfAllThatReadingCounts(String time, double factor) {
        PullFindings pull = only(Dyno.day(AIR, LATER).pull("base", time, 150));
        assertThat(pull.factor().orElseThrow().value()).isCloseTo(factor, within(1e-4));
    }

    @Test
    void aPullWithoutAirHasNoCorrectedFigures() {
        PullFindings pull = only(Dyno.day().pull("base", "13:45", 150));
        assertThat(pull.peakCorrectedKw()).isEmpty();
        assertThat(pull.bandCorrectedKw()).isEmpty();
        assertThat(pull.bandMeasuredKw()).hasValue(150);
    }

    @Test
    void figuresCorrectedToTheSessionsStandardAreTakenAsTheyAreAndSaid() {
        PullFindings pull = only(Dyno.day(LATER).corrected("base", "13:45", 150, Standard.SAE_J1349));
        assertThat(pull.bandCorrectedKw()).hasValue(150);
        assertThat(pull.flags())
                .containsExactly(
                        "corrected: the file's figures are already corrected to SAE J1349 and taken as they are;"
                                + " the air of the day is not used.");
    }

    @Test
    void figuresCorrectedToAnotherStandardHaveNoCorrectedFigureAndSaySo() {
        PullFindings pull = only(Dyno.day(AIR).corrected("base", "13:45", 150, Standard.SAE_J607));
        assertThat(pull.bandCorrectedKw()).isEmpty();
        assertThat(pull.flags())
                .singleElement()
                .asString()
                .startsWith("corrected: ")
                .contains("SAE J607, not to SAE J1349");
    }

    @Test
    void anExcludedPullKeepsItsFiguresButIsNoPartOfTheMean() {
        DynoFindings found =
                assess(Dyno.day(AIR).pull("base", "13:45", 150).excluded("base", "13:50", 90, "wheel spin"), BAND);
        assertThat(found.pulls()).hasSize(2);
        assertThat(found.setups()).containsExactly(new DynoFindings.SetupPower("base", 1, 150, true));
    }

    @Test
    void withoutABandToldItIsWhatAllCountedPullsCover() {
        DynoFindings found = assess(
                Dyno.day(AIR)
                        .from("base", "13:45", 2000, 5800)
                        .from("base", "13:50", 2200, 6200)
                        .excluded("base", "13:55", 90, "stopped at 4000"),
                Optional.empty());
        assertThat(found.bandFrom()).hasValue(2200);
        assertThat(found.bandTo()).hasValue(5800);
        assertThat(found.bandIsDefault()).isTrue();
    }

    @Test
    void aBandToldIsNoDefault() {
        DynoFindings found = assess(Dyno.day(AIR).pull("base", "13:45", 150), BAND);
        assertThat(found.bandFrom()).hasValue(2600);
        assertThat(found.bandIsDefault()).isFalse();
    }

    @Test
    void aPullThatEndsInTheBandIsFlaggedAndHasNoBandPower() {
        PullFindings pull = only(Dyno.day(AIR).from("base", "13:45", 2000, 4800));
        assertThat(pull.bandMeasuredKw()).isEmpty();
        assertThat(pull.flags())
                .containsExactly("band: the pull reaches from 2,000 to 4,800 rpm and does not cover 2,600 to 5,000 rpm;"
                        + " it has no band power.");
    }

    @Test
    void theSameFileTwiceIsFlagged() {
        DynoFindings found = assess(Dyno.day(AIR).pull("base", "13:45", 150).again("base", "13:50", 150), BAND);
        assertThat(found.pulls().get(0).flags()).isEmpty();
        assertThat(found.pulls().get(1).flags())
                .containsExactly("duplicate: the file is the same as that of base-1, byte for byte.");
    }

    @Test
    void aPullMadeBeforeTheOneBeforeItIsFlagged() {
        DynoFindings found = assess(Dyno.day(AIR).pull("base", "13:45", 150).pull("base", "13:30", 151), BAND);
        assertThat(found.pulls().get(1).flags())
                .containsExactly("time: it stands after base-1 but was made before it, by the times given.");
    }

    @Test
    void fewSamplesAreFlagged() {
        PullFindings pull = only(Dyno.day(AIR).coarse("base", "13:45"));
        assertThat(pull.flags()).singleElement().asString().startsWith("sparse: ");
    }

    @Test
    void pullsAreNamedByTheirSetupsName() {
        DynoFindings found = assess(Dyno.day(AIR).pull("timing-32", "13:45", 150), BAND);
        assertThat(found.pulls().get(0).name()).isEqualTo("timing 32°-1");
    }

    @Test
    void withoutPullsItSaysWhatToDoFirst() {
        DynoFindings found = assess(Dyno.day(AIR), BAND);
        assertThat(found.answer().plain())
                .isEqualTo("No pull yet: type the air of the day, then take in the first pull file.");
        assertThat(found.latestAir()).contains(AIR);
        assertThat(found.latestFactor()).isPresent();
    }

    /**
     * Three pulls of 149, 150 and 151 kW: s = 1, t(0.95, 2) = 2.920 (any table of Student's t), 2.920/√3 = 1.686 kW. 150 kW are
     * 201.2 hp and 1.686 kW are 2.3 hp (745.6999 W).
     */
    @Test
    void theAnswerHasUnitStandardAndUncertainty() {
        DynoFindings found = assess(
                Dyno.day(AIR)
                        .pull("base", "13:45", 149)
                        .pull("base", "13:50", 150)
                        .pull("base", "13:55", 151),
                BAND);
        assertThat(found.answer().marked().replace('\u00a0', ' '))
                .isEqualTo("Base makes **201.2 hp** at the wheels, mean of 2,600 to 5,000 rpm, SAE J1349, **± 2.3**.");
    }

    @Test
    void onePullHasNoUncertaintyYet() {
        DynoFindings found = assess(Dyno.day(AIR).pull("base", "13:45", 150), BAND);
        assertThat(found.answer().plain()).endsWith("SAE J1349, one pull, no repeat yet.");
    }

    @Test
    void theAnswerSaysThatAFigureIsNotCorrected() {
        DynoFindings found = assess(Dyno.day().pull("base", "13:45", 150), BAND);
        assertThat(found.answer().plain()).contains("as measured, not corrected because a pull has no air");
        assertThat(found.setups()).containsExactly(new DynoFindings.SetupPower("base", 1, 150, false));
    }

    @Test
    void figuresOfTwoStandardsAreNotAveraged() {
        DynoFindings found = assess(
                Dyno.day(AIR).pull("base", "13:45", 150).corrected("base", "13:50", 170, Standard.SAE_J607), BAND);
        assertThat(found.setups()).containsExactly(new DynoFindings.SetupPower("base", 1, 150, true));
    }

    @Test
    void theAnswerSaysThatTheBandIsADefault() {
        DynoFindings found = assess(Dyno.day(AIR).pull("base", "13:45", 150), Optional.empty());
        assertThat(found.answer().plain()).contains("(all that the pulls cover)");
    }

    @Test
    void aPullWhoseFileIsLostIsLeftOut() {
        DynoFindings found = new DynoAssessor(new Correction(), new TradeConstants().pulls(Judgement.own()))
                .assess(
                        Dyno.day(AIR).pull("base", "13:45", 150).days(),
                        Dyno.SETUPS,
                        Map.of(),
                        Standard.SAE_J1349,
                        BAND,
                        new Figures(UnitSystem.US));
        assertThat(found.pulls()).isEmpty();
    }

    private static PullFindings only(Dyno dyno) {
        List<PullFindings> pulls = assess(dyno, BAND).pulls();
        assertThat(pulls).hasSize(1);
        return pulls.get(0);
    }

    private static DynoFindings assess(Dyno dyno, Optional<RpmRange> band) {
        return new DynoAssessor(new Correction(), new TradeConstants().pulls(Judgement.own()))
                .assess(dyno.days(), Dyno.SETUPS, dyno.traces(), Standard.SAE_J1349, band, new Figures(UnitSystem.US));
    }
}
