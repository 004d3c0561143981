package org.pullproof.changes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.pullproof.dyno.PullFindings;
import org.pullproof.engine.Setup;
import org.pullproof.units.Figures;
import org.pullproof.units.UnitSystem;
import org.pullproof.weather.Standard;

class ChangeJudgeTest {
    private static final Figures US = new Figures(UnitSystem.US);

    /** s1_aba.csv and its expected values: computed with R lm on the whitened data. */
    @Test
    void threePullsEachWithReturnAreAGainOfTheSizeThatRGives() {
        Table expected = Table.read("s1_aba.expected.csv");
        JudgedChange change = only(judge(pullsOf(Table.read("s1_aba.csv"))));
        assertThat(change.call().key()).isEqualTo(expected.text(18, "value")); // B-A_verdict
        assertThat(change.differencePercent())
                .isCloseTo(expected.number("value", "fit", "all", "key", "B-A_est_pct"), within(1e-5));
        assertThat(change.low())
                .isCloseTo(100 * Math.expm1(0.769996 / 100), within(1e-5)); // B-A_lo90, shown as percent of power
        assertThat(change.high()).isCloseTo(100 * Math.expm1(2.160517 / 100), within(1e-5)); // B-A_hi90
        assertThat(change.holdsForAll()).isTrue(); // B-A_holm: holds
    }

    @Test
    void scatterAndDriftAreThoseOfTheFit() {
        Table expected = Table.read("s1_aba.expected.csv");
        ChangeLedger ledger = judge(pullsOf(Table.read("s1_aba.csv")));
        assertThat(ledger.repeatabilityPercent().orElseThrow())
                .isCloseTo(expected.number("value", "fit", "all", "key", "s"), within(1e-5));
        assertThat(ledger.driftPercentPerPull().orElseThrow())
                .isCloseTo(expected.number("value", "fit", "all", "key", "drift_per_pull"), within(1e-5));
    }

    @Test
    void otherNamesOfTheSetupsChangeNoFigure() {
        List<PullFindings> pulls = new Pulls()
                .on("z", 96.7, 96.6)
                .on("a", 97.3, 97.4)
                .on("z", 96.1, 96.2)
                .list();
        List<Setup> setups = List.of(Setup.named("z", "before"), Setup.named("a", "after"));
        List<Change> steps = List.of(step("z", "a"));
        JudgedChange renamed = only(new ChangeJudge().judge(setups, steps, "z", pulls, 1, US));
        JudgedChange plain = only(judge(new Pulls()
                .on("A", 96.7, 96.6)
                .on("B", 97.3, 97.4)
                .on("A", 96.1, 96.2)
                .list()));
        assertThat(renamed.differencePercent()).isEqualTo(plain.differencePercent());
        assertThat(renamed.low()).isEqualTo(plain.low());
    }

    @Test
    void twiceThePowerChangesNoPercentage() {
        JudgedChange plain = only(judge(
                new Pulls().on("A", 96.7, 96.6).on("B", 97.3).on("A", 96.1).list()));
        JudgedChange twice = only(judge(
                new Pulls().on("A", 193.4, 193.2).on("B", 194.6).on("A", 192.2).list()));
        assertThat(twice.differencePercent()).isCloseTo(plain.differencePercent(), within(1e-9));
        assertThat(twice.high()).isCloseTo(plain.high(), within(1e-9));
        assertThat(twice.differenceKw()).isCloseTo(2 * plain.differenceKw(), within(1e-9));
    }

    @Test
    void aClearFallIsALoss() {
        JudgedChange change = only(judge(new Pulls()
                .on("A", 100, 100.2, 99.9)
                .on("B", 97, 96.9, 97.1)
                .on("A", 100, 99.9, 100.1)
                .list()));
        assertThat(change.call()).isEqualTo(Call.LOSS);
        assertThat(change.sentence()).contains("at the wheels").contains("SAE J1349");
    }

    @Test
    void aNarrowIntervalAroundNothingIsTheSame() {
        Pulls pulls = new Pulls();
        for (int i = 0; i < 4; i++) {
            pulls.on("A", 100, 100.05).on("B", 100.02, 100.01);
        }
        JudgedChange change = only(judge(pulls.on("A", 100, 100.03).list()));
        assertThat(change.call()).isEqualTo(Call.SAME);
        assertThat(change.sentence()).contains("inside ± 1\u00a0%, the least you would pay for");
    }

    @Test
    void oneUncertainPullEachIsNoCallYetWithItsRange() {
        JudgedChange change = only(judge(new Pulls().on("A", 100).on("B", 100.6).list()));
        assertThat(change.call()).isEqualTo(Call.NO_CALL);
        assertThat(change.holdsForAll()).isFalse();
        assertThat(change.sentence()).startsWith("Between \u22121.4 and +2.7\u00a0%: no call yet.");
    }

    @Test
    void aStepWithoutReturnSaysWhatDriftAloneWouldDo() {
        JudgedChange change = only(judge(new Pulls().on("A", 100).on("B", 103).list()));
        assertThat(change.sentence()).contains("a drift of 0.3\u00a0% a pull alone would move this by 0.3\u00a0%");
    }

    @Test
    void aSideWhoseEveryPullIsADuplicateIsSpoiledAndNamed() {
        JudgedChange change = only(judge(new Pulls()
                .on("A", 100, 100.1)
                .flagged("B", 104, "duplicate of A-1")
                .flagged("B", 104, "duplicate of A-2")
                .list()));
        assertThat(change.call()).isEqualTo(Call.SPOILED);
        assertThat(change.holdsForAll()).isFalse();
        assertThat(change.sentence()).contains("B-1 and B-2 (duplicate of A-1)");
    }

    @Test
    void aCallThatHingesOnAFlaggedPullIsNotMade() {
        JudgedChange change = only(judge(new Pulls()
                .on("A", 100, 100.1, 100)
                .on("B", 100.1, 99.9)
                .flagged("B", 109, "slip 3 % rising")
                .flagged("B", 109, "slip 3 % rising")
                .on("A", 100, 100.1, 100)
                .list()));
        assertThat(change.call()).isEqualTo(Call.NO_CALL);
        assertThat(change.sentence()).startsWith("Hinges on B-3 and B-4 (slip 3 % rising)");
    }

    @Test
    void aSetupOfWhichNoPullCoversTheBandHasNoFigureAndIsSpoiled() {
        ChangeLedger ledger =
                judge(new Pulls().on("A", 100, 100.1).withoutBand("B").list());
        assertThat(ledger.changes()).isEmpty();
        assertThat(ledger.unjudged()).singleElement().satisfies(spoiled -> {
            assertThat(spoiled.call()).isEqualTo(Call.SPOILED);
            assertThat(spoiled.sentence()).contains("B-1 (band not covered: it ends at 4,100 rpm)");
        });
    }

    @Test
    void aChangeWithoutPullsWaits() {
        ChangeLedger ledger = judge(new Pulls().on("A", 100, 100.1).list());
        assertThat(ledger.unjudged()).singleElement().satisfies(waiting -> {
            assertThat(waiting.call()).isEqualTo(Call.NO_CALL);
            assertThat(waiting.sentence()).isEqualTo("No pull of setup B counts yet.");
        });
    }

    @Test
    void anExcludedPullKeepsThePlaceOfTheOthers() {
        JudgedChange excluded = only(judge(new Pulls()
                .on("A", 100, 100.1)
                .excluded("A", 90)
                .on("B", 101, 101.2)
                .on("A", 99.9)
                .list()));
        JudgedChange shifted = only(judge(new Pulls()
                .on("A", 100, 100.1)
                .on("B", 101, 101.2)
                .on("A", 99.9)
                .list()));
        assertThat(excluded.differencePercent()).isNotEqualTo(shifted.differencePercent());
        assertThat(excluded.differencePercent()).isCloseTo(shifted.differencePercent(), within(0.2));
    }

    @Test
    void onePullWithoutAirPutsEveryCallOnMeasuredPowerAndSaysSo() {
        ChangeLedger ledger = judge(new Pulls()
                .withFactor("A", 100, 1.05)
                .withFactor("A", 100.1, 1.05)
                .withoutAir("B", 103)
                .list());
        assertThat(ledger.onMeasured()).isTrue();
        assertThat(only(ledger).beforeKw()).isCloseTo(100.05, within(1e-9));
        assertThat(ledger.answer().plain()).endsWith("Judged on measured power, since the air is missing for B-1.");
    }

    @Test
    void correctedPowerIsJudgedWhereEveryPullHasItsAir() {
        ChangeLedger ledger = judge(new Pulls()
                .withFactor("A", 100, 1.05)
                .withFactor("B", 100, 1.02)
                .list());
        assertThat(ledger.onMeasured()).isFalse();
        assertThat(only(ledger).beforeKw()).isCloseTo(105, within(1e-9));
    }

    @Test
    void filesAllCorrectedToOneOtherStandardAreComparedOnThatStandard() {
        ChangeLedger ledger = judge(new Pulls()
                .alreadyOn(Standard.SAE_J607, "A", 100)
                .alreadyOn(Standard.SAE_J607, "B", 104)
                .list());
        assertThat(ledger.onMeasured()).isFalse();
        assertThat(only(ledger).call()).isEqualTo(Call.GAIN);
        assertThat(only(ledger).sentence()).contains("SAE J607");
    }

    @Test
    void filesCorrectedToTheSessionsStandardStandBesideOurs() {
        ChangeLedger ledger = judge(
                new Pulls().alreadyOn(Standard.SAE_J1349, "A", 100).on("B", 104).list());
        assertThat(only(ledger).call()).isEqualTo(Call.GAIN);
    }

    /** Figures of two standards differ by up to 4 % in the same air, see 01_power_correction_grid.csv. */
    @Test
    void figuresOfTwoStandardsAreNeverCompared() {
        ChangeLedger ledger = judge(new Pulls()
                .on("A", 100, 100.1)
                .alreadyOn(Standard.SAE_J607, "B", 104)
                .list());
        assertThat(ledger.changes()).isEmpty();
        assertThat(ledger.unjudged()).singleElement().satisfies(spoiled -> {
            assertThat(spoiled.call()).isEqualTo(Call.SPOILED);
            assertThat(spoiled.sentence()).contains("already corrected to SAE J607");
        });
    }

    @Test
    void daysThatNoSetupLinksAreSaidToCarryTheDaysInTheInterval() {
        JudgedChange change = only(judge(
                new Pulls().on("A", 100, 100.1).nextDay().on("B", 101, 101.1).list()));
        assertThat(change.high() - change.low()).isGreaterThan(5);
        assertThat(change.sentence()).contains("the scatter from day to day is in the interval");
    }

    @Test
    void aChainOfSetupsLinksDays() {
        List<Setup> setups = List.of(Setup.named("A", "A"), Setup.named("B", "B"), Setup.named("C", "C"));
        List<PullFindings> pulls = new Pulls()
                .on("A", 100, 100.1)
                .on("B", 101, 101.1)
                .nextDay()
                .on("B", 101.5, 101.6)
                .on("C", 102, 102.1)
                .list();
        ChangeLedger ledger =
                new ChangeJudge().judge(setups, List.of(step("A", "B"), step("B", "C")), "C", pulls, 1, US);
        assertThat(ledger.baselineToNow())
                .get()
                .extracting(JudgedChange::sentence)
                .asString()
                .contains("linked by setups");
    }

    @Test
    void theFirstSetupIsComparedWithThePresentOneDirectly() {
        List<Setup> setups = List.of(Setup.named("A", "A"), Setup.named("B", "B"), Setup.named("C", "C"));
        List<PullFindings> pulls = new Pulls()
                .on("A", 100, 100.1)
                .on("B", 103, 103)
                .on("C", 103, 103.1)
                .list();
        ChangeLedger ledger =
                new ChangeJudge().judge(setups, List.of(step("A", "B"), step("B", "C")), "C", pulls, 1, US);
        JudgedChange whole = ledger.baselineToNow().orElseThrow();
        assertThat(whole.name()).isEqualTo("A → C");
        // By hand: 100 ln(103.05/100.05) = 2.95; B, pulled between, moves neither mean.
        assertThat(whole.differencePercent()).isCloseTo(3.0, within(0.1));
        assertThat(whole.sentence())
                .containsPattern("The steps add up to \\+(2.9|3.0).%; the pulls of these two alone say \\+(2.9|3.0).%");
    }

    @Test
    void aSetupInBetweenThatDriftsSetsTheStepsApartFromTheDirectMeasurement() {
        List<Setup> setups = List.of(Setup.named("A", "A"), Setup.named("B", "B"), Setup.named("C", "C"));
        List<PullFindings> pulls = new Pulls()
                .on("A", 100, 100)
                .on("B", 103, 101.5, 100, 98.5, 97)
                .on("C", 100, 100)
                .list();
        JudgedChange whole = new ChangeJudge()
                .judge(setups, List.of(step("A", "B"), step("B", "C")), "C", pulls, 1, US)
                .baselineToNow()
                .orElseThrow();
        assertThat(whole.differencePercent()).isGreaterThan(2);
        assertThat(whole.sentence()).containsPattern("these two alone say [+−]?0\\.\\d");
    }

    @Test
    void theAnswerCountsCallsAndGivesTheLargestWithItsInterval() {
        ChangeLedger ledger = judge(new Pulls()
                .on("A", 100, 100.1, 100)
                .on("B", 103, 103.1, 103)
                .on("A", 100, 100.1, 100)
                .list());
        assertThat(ledger.answer().marked()).startsWith("**One gain.** Setup B made **+3.0\u00a0%** (+2.");
    }

    @Test
    void withoutPullsNothingIsSaidAboutPower() {
        ChangeLedger ledger = judge(List.of());
        assertThat(ledger.repeatabilityPercent()).isEmpty();
        assertThat(ledger.answer().plain()).startsWith("No pull counts yet.");
    }

    @Test
    void residualsLeaveTheDriftInAndTakeTheSetupOut() {
        ChangeLedger ledger = judge(pullsOf(Table.read("s1_aba.csv")));
        assertThat(ledger.residuals()).hasSize(9);
        ChangeLedger.Residual first = ledger.residuals().get(0);
        assertThat(first.percent()).isCloseTo(100 * Math.expm1(Math.log(96.74) - 4.56387684), within(1e-5)); // effect_A
        assertThat(first.driftPercent())
                .isCloseTo(100 * Math.expm1(4 * 0.177530 / 100), within(1e-5)); // drift_per_pull
    }

    private static ChangeLedger judge(List<PullFindings> pulls) {
        List<Setup> setups = List.of(Setup.named("A", "setup A"), Setup.named("B", "setup B"));
        return new ChangeJudge().judge(setups, List.of(step("A", "B")), "A", pulls, 1, US);
    }

    private static JudgedChange only(ChangeLedger ledger) {
        assertThat(ledger.changes()).hasSize(1);
        return ledger.changes().get(0);
    }

    private static List<PullFindings> pullsOf(Table table) {
        Pulls pulls = new Pulls();
        for (int row = 0; row < table.size(); row++) {
            pulls.on(table.text(row, "setting"), table.number(row, "power_kw"));
        }
        return pulls.list();
    }

    private static Change step(String from, String to) {
        return new Change(from, to, "", LocalDateTime.of(2026, 6, 14, 13, 40), Optional.empty(), Set.of());
    }
}
