package org.pullproof.changes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.dyno.PullFindings;
import org.pullproof.engine.Setup;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;
import org.pullproof.units.UnitSystem;

/** The invented timing sweep (total degrees; hp in order; 38° knocked) and what the method must say of it. */
class SweepTest {
    private static final double[] DEGREES = {32, 26, 35, 29, 38, 32, 29, 35, 26, 38, 32};
    private static final double[] HP = {222.4, 215.6, 222.5, 218.5, 218.3, 221.0, 220.1, 221.2, 214.0, 219.9, 221.3};

    /** "best 33.5–33.7° (without / with the timing prior)". */
    @ParameterizedTest
    @CsvSource({"false, 33.5", "true, 33.7"})
    void theOptimumIsThatOfTheStory(boolean timing, double best) {
        assertThat(fit(timing).optimum()).isCloseTo(best, within(0.05));
    }

    /** "s 0.44 %". */
    @Test
    void theScatterIsThatOfTheStory() {
        assertThat(fit(true).fit().scatter()).isCloseTo(0.44, within(0.005));
    }

    /** Section 9: ν = ν0 + N − 3 without, ν0 + N − 2 with the timing prior. */
    @ParameterizedTest
    @CsvSource({"false, 12", "true, 13"})
    void theAssumedCurvatureGivesBackADegreeOfFreedom(boolean timing, double degrees) {
        assertThat(fit(timing).fit().degrees()).isEqualTo(degrees);
    }

    @Test
    void theLeastAdvanceWithinHalfAPercentIsRecommendedAndNothingThatKnocked() {
        Sweep sweep = only(timing(DEGREES, HP));
        assertThat(sweep.best()).isCloseTo(33.6, within(0.11));
        assertThat(sweep.recommended().orElseThrow()).isEqualTo(31);
        assertThat(sweep.next()).isEmpty();
        assertThat(sweep.sentence()).contains("Use 31°").contains("38° knocked: nothing from there up.");
    }

    /** "shown no tighter than ± 1°". */
    @Test
    void theBestTimingIsNeverShownTighterThanADegree() {
        Sweep sweep = only(timing(DEGREES, HP));
        assertThat(sweep.bounded()).isTrue();
        assertThat(sweep.high().orElseThrow() - sweep.best()).isGreaterThanOrEqualTo(1);
        assertThat(sweep.best() - sweep.low().orElseThrow()).isGreaterThanOrEqualTo(1);
    }

    @Test
    void climbingPowerHasNoPeakYetAndGoesOnOneStep() {
        Sweep sweep = only(timing(new double[] {26, 29, 32, 29, 26}, new double[] {214, 217, 221, 217.2, 214.1}));
        assertThat(sweep.bounded()).isFalse();
        assertThat(sweep.best()).isEqualTo(32);
        assertThat(sweep.next().orElseThrow()).isEqualTo(35);
        assertThat(sweep.sentence())
                .contains("no peak proved yet")
                .contains("Next worth two pulls: 35°. That is more advance than was tried")
                .contains("lift at the first sign");
    }

    @Test
    void aLevelThatKnockedIsNeverRecommendedNorGoneBeyond() {
        Pulls pulls = new Pulls();
        double[] degrees = {26, 29, 32};
        double[] hp = {214, 217, 221};
        for (int i = 0; i < 3; i++) {
            pulls.flagged(id(degrees[i]), hp[i], degrees[i] == 32 ? "knock: 3 events" : "time: told");
        }
        Sweep sweep = only(sweeps(pulls.list(), List.of(26.0, 29.0, 32.0)));
        assertThat(sweep.recommended().orElseThrow()).isLessThan(32);
        assertThat(sweep.next().orElseThrow()).isLessThan(32);
    }

    @Test
    void anotherSetupBetweenTwoTimingsBeginsAnotherSweep() {
        List<Setup> setups = List.of(setup(26), setup(29), Setup.named("filter", "filter"), setup(32));
        List<Change> changes = List.of(step("s26", "s29"), step("s29", "filter"), step("filter", "s32"));
        assertThat(SweepGroup.among(setups, changes)).isEmpty();
    }

    @Test
    void twoLevelsAreNoSweep() {
        assertThat(sweeps(new Pulls().on("s26", 100, 101).on("s29", 102, 103).list(), List.of(26.0, 29.0)))
                .isEmpty();
    }

    private static SweepFit fit(boolean timing) {
        List<Observation> pulls = new ArrayList<>();
        for (int i = 0; i < HP.length; i++) {
            pulls.add(new Observation(0, i + 1, i, 0, 100 * Math.log(HP[i])));
        }
        return new SweepFit(pulls, DEGREES, timing, Prior.OF_THIS_PROJECT);
    }

    private static List<Sweep> timing(double[] degrees, double[] hp) {
        Pulls pulls = new Pulls();
        for (int i = 0; i < hp.length; i++) {
            if (degrees[i] == 38) {
                pulls.flagged(id(degrees[i]), hp[i], "knock: heard in the pull");
            } else {
                pulls.on(id(degrees[i]), hp[i]);
            }
        }
        return sweeps(pulls.list(), Arrays.stream(degrees).boxed().distinct().toList());
    }

    private static List<Sweep> sweeps(List<PullFindings> pulls, List<Double> degrees) {
        List<Setup> setups = degrees.stream().map(SweepTest::setup).toList();
        List<Change> steps = new ArrayList<>();
        for (int i = 1; i < setups.size(); i++) {
            steps.add(step(setups.get(i - 1).id(), setups.get(i).id()));
        }
        return new ChangeJudge()
                .judge(setups, steps, setups.get(0).id(), pulls, 1, new Figures(UnitSystem.US))
                .sweeps();
    }

    private static String id(double degrees) {
        return "s" + (int) degrees;
    }

    private static Setup setup(double degrees) {
        Quantity level = Quantity.of(String.valueOf((int) degrees), Unit.DEGREE);
        return new Setup(id(degrees), "timing " + (int) degrees + "°", Map.of("timing", level), "");
    }

    private static Change step(String from, String to) {
        return new Change(from, to, "", LocalDateTime.of(2026, 6, 14, 13, 40), Optional.empty(), Set.of());
    }

    private static Sweep only(List<Sweep> sweeps) {
        assertThat(sweeps).hasSize(1);
        return sweeps.get(0);
    }
}
