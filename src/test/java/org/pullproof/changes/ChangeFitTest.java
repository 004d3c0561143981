package org.pullproof.changes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ChangeFitTest {
    private static final double PRINTED = 1e-5;

    /** s1_aba.expected.csv: computed with R lm on the whitened data, 6 decimals. */
    @ParameterizedTest
    @CsvSource({
        "s2",
        "s",
        "drift_per_pull",
        "drift_se",
        "effect_A",
        "effect_B",
        "nu",
        "B-A_est",
        "B-A_v",
        "B-A_se",
        "B-A_lo90",
        "B-A_hi90",
        "B-A_p2",
        "B-A_drift_leverage",
        "B-A_est_pct"
    })
    void threePullsEachWithReturnAgreeWithR(String key) {
        ChangeFit fit = ChangeFit.of(aba(), Prior.OF_THIS_PROJECT);
        double expected = Table.read("s1_aba.expected.csv").number("value", "fit", "all", "key", key);
        assertEquals(expected, value(fit, key), PRINTED);
    }

    private static double value(ChangeFit fit, String key) {
        Estimate change = fit.compare(1, 0);
        double se = change.standardError();
        return switch (key) {
            case "s2" -> fit.scatter() * fit.scatter();
            case "s" -> fit.scatter();
            case "drift_per_pull" -> fit.drift(0);
            case "drift_se" -> fit.driftStandardError(0);
            case "effect_A" -> fit.level(0);
            case "effect_B" -> fit.level(1);
            case "nu" -> fit.degrees();
            case "B-A_est" -> change.difference();
            case "B-A_v" -> se * se / (fit.scatter() * fit.scatter());
            case "B-A_se" -> se;
            case "B-A_lo90" -> change.low();
            case "B-A_hi90" -> change.high();
            case "B-A_p2" -> change.twoSidedP();
            case "B-A_drift_leverage" -> fit.driftLeverage(1, 0);
            case "B-A_est_pct" -> Estimate.percent(change.difference());
            default -> throw new IllegalArgumentException(key);
        };
    }

    /** s1_aba.expected.csv: R's leave-one-out deletion residuals on the whitened data. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9})
    void deletionResidualsAgreeWithR(int pull) {
        double expected = Table.read("s1_aba.expected.csv").number("value", "fit", "all", "key", "tdel_pull" + pull);
        double[] t = ChangeFit.of(aba(), Prior.OF_THIS_PROJECT).deletionResiduals();
        assertEquals(expected, t[pull - 1], PRINTED);
    }

    /** s1_aba.expected.csv: t(1 − 0.05/(2·9), 10). */
    @Test
    void theLimitOfADeletionResidualAgreesWithR() {
        double expected = Table.read("s1_aba.expected.csv").number("value", "fit", "all", "key", "flag_crit");
        assertEquals(expected, OddPulls.limit(ChangeFit.of(aba(), Prior.OF_THIS_PROJECT)), PRINTED);
    }

    /** s1_aba.expected.csv: "flags,pulls,none". */
    @Test
    void noneOfThesePullsIsOdd() {
        assertThat(OddPulls.in(aba(), Prior.OF_THIS_PROJECT)).isEmpty();
    }

    /** R 4.2.2 lm(power ~ treat + min): without anything assumed the fit is ordinary least squares. */
    @ParameterizedTest
    @ValueSource(strings = {"d1_ABA", "d2_ABBA", "d3_AB"})
    void withNothingAssumedTheFitIsOrdinaryLeastSquares(String data) {
        Table expected = Table.read("drift_lm_results.csv");
        String model = data + " ~treat+min";
        ChangeFit fit = ChangeFit.of(treated("drift_" + data + ".csv"), Prior.NONE);
        Estimate treat = fit.compare(1, 0);
        assertThat(List.of(
                        treat.difference(),
                        treat.standardError(),
                        fit.drift(0),
                        fit.driftStandardError(0),
                        fit.scatter(),
                        fit.degrees(),
                        treat.twoSidedP()))
                .usingComparatorForType(nearly(), Double.class)
                .containsExactly(
                        expected.number("estimate", "dataset", model, "term", "treat"),
                        expected.number("se", "dataset", model, "term", "treat"),
                        expected.number("estimate", "dataset", model, "term", "min"),
                        expected.number("se", "dataset", model, "term", "min"),
                        expected.number("sigma", "dataset", model, "term", "treat"),
                        expected.number("df", "dataset", model, "term", "treat"),
                        expected.number("p", "dataset", model, "term", "treat"));
    }

    /**
     * NIST Statistical Reference Datasets, Norris: certified slope 1.00211681802045 with standard deviation
     * 0.429796848199937E-03, residual standard deviation 0.884796396144373 with 34 degrees of freedom. A straight line is one
     * setting with drift.
     */
    @Test
    void aStraightLineAgreesWithTheCertifiedValues() {
        Table norris = Table.read("strd_norris.csv");
        List<Observation> line = new ArrayList<>();
        for (int row = 0; row < norris.size(); row++) {
            line.add(new Observation(0, norris.number(row, "x"), 0, 0, norris.number(row, "y")));
        }
        ChangeFit fit = ChangeFit.of(line, Prior.NONE);
        assertThat(List.of(fit.drift(0), fit.driftStandardError(0), fit.scatter(), fit.degrees()))
                .usingComparatorForType(nearly(), Double.class)
                .containsExactly(1.00211681802045, 0.000429796848199937, 0.884796396144373, 34.0);
    }

    /** Section 2 of the method: "works with N = K (one pull each), where s = s0 and ν = 4". */
    @Test
    void onePullEachKeepsTheAssumedScatter() {
        ChangeFit fit = ChangeFit.of(
                List.of(new Observation(0, 1, 0, 0, 460), new Observation(0, 2, 1, 1, 463)), Prior.OF_THIS_PROJECT);
        assertThat(fit.scatter()).isCloseTo(0.6, within(1e-9));
        assertThat(fit.degrees()).isEqualTo(4);
        assertThat(fit.compare(1, 0).difference()).isCloseTo(3, within(1e-9));
    }

    /** Section 5 of the method: with one pull a setting "need |est| ≥ 2.05 %". */
    @Test
    void onePullEachCanOnlyTellTwoPercent() {
        ChangeFit fit = ChangeFit.of(
                List.of(new Observation(0, 1, 0, 0, 460), new Observation(0, 2, 1, 1, 463)), Prior.OF_THIS_PROJECT);
        assertThat(fit.compare(1, 0).halfWidth()).isCloseTo(2.05, within(0.005));
    }

    /** Section 10 of the method: the leverage of a sequence without return is "1 for singles". */
    @Test
    void aSingleStepWithoutReturnMovesByTheDriftOfOnePull() {
        ChangeFit fit = ChangeFit.of(
                List.of(new Observation(0, 1, 0, 0, 460), new Observation(0, 2, 1, 1, 463)), Prior.OF_THIS_PROJECT);
        assertThat(fit.driftLeverage(1, 0)).isCloseTo(1, within(1e-9));
        assertThat(fit.driftIsMeasured()).isFalse();
    }

    @Test
    void scalingAllPowerChangesNoDifference() {
        double twice = 100 * Math.log(2);
        List<Observation> doubled = aba().stream()
                .map(o -> new Observation(o.day(), o.clock(), o.block(), o.setting(), o.y() + twice))
                .toList();
        Estimate plain = ChangeFit.of(aba(), Prior.OF_THIS_PROJECT).compare(1, 0);
        Estimate scaled = ChangeFit.of(doubled, Prior.OF_THIS_PROJECT).compare(1, 0);
        assertThat(scaled.difference()).isCloseTo(plain.difference(), within(1e-9));
        assertThat(scaled.low()).isCloseTo(plain.low(), within(1e-9));
    }

    /** A pull that says just what the fit expected leaves every estimate and narrows every interval it bears on. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1})
    void aPullEqualToTheFitNarrowsTheInterval(int setting) {
        ChangeFit before = ChangeFit.of(aba(), Prior.OF_THIS_PROJECT);
        List<Observation> more = new ArrayList<>(aba());
        Observation last = new Observation(0, 10, 9, setting, 0);
        more.add(new Observation(0, 10, 9, setting, expected(before, last)));
        ChangeFit after = ChangeFit.of(more, Prior.OF_THIS_PROJECT);
        assertThat(after.compare(1, 0).halfWidth())
                .isLessThan(before.compare(1, 0).halfWidth());
    }

    private static double expected(ChangeFit fit, Observation pull) {
        return fit.level(pull.setting()) + fit.driftAt(pull);
    }

    /**
     * Section 12, checked by another way to the same figures: least squares on the setting columns alone with the marginal
     * covariance s²V + t·tᵀ·s²/κ + 1.2² within a day (numpy 2.4.6), which has no prior rows.
     */
    @ParameterizedTest
    @CsvSource({
        "1, 0, 1.9615155032, 0.6385530466, 9.4646743334",
        "2, 0, -1.1053944579, 0.6385530466, 9.4646743334",
        "2, 1, -3.0669099611, 0.8902330287, 9.9965990190"
    })
    void twoLinkedDaysAgreeWithTheMarginalModel(int newer, int older, double difference, double se, double degrees) {
        Estimate change = ChangeFit.of(twoDays(), Prior.OF_THIS_PROJECT).compare(newer, older);
        assertThat(change.difference()).isCloseTo(difference, within(1e-8));
        assertThat(change.standardError()).isCloseTo(se, within(1e-8));
        assertThat(change.degrees()).isCloseTo(degrees, within(1e-8));
    }

    /** Section 12: days that nothing links are held together only by the assumed day scatter, so t trusts it as given. */
    @Test
    void unlinkedDaysWidenTheIntervalAndTakeTheDayScatterAsGiven() {
        List<Observation> unlinked = List.of(
                new Observation(0, 1, 0, 0, 460),
                new Observation(0, 2, 0, 0, 460.2),
                new Observation(1, 1, 1, 1, 462),
                new Observation(1, 2, 1, 1, 462.2));
        Estimate across = ChangeFit.of(unlinked, Prior.OF_THIS_PROJECT).compare(1, 0);
        assertThat(across.standardError()).isGreaterThan(Math.sqrt(2) * 1.2);
        assertThat(across.degrees()).isGreaterThan(50);
    }

    private static List<Observation> twoDays() {
        return List.of(
                new Observation(0, 1, 0, 0, 460.0),
                new Observation(0, 2, 0, 0, 460.3),
                new Observation(0, 3, 1, 1, 462.4),
                new Observation(0, 4, 1, 1, 461.9),
                new Observation(1, 1, 2, 0, 461.6),
                new Observation(1, 2, 2, 0, 461.1),
                new Observation(1, 3, 3, 2, 460.2),
                new Observation(1, 4, 3, 2, 459.9));
    }

    private static List<Observation> aba() {
        Table table = Table.read("s1_aba.csv");
        List<Observation> pulls = new ArrayList<>();
        for (int row = 0; row < table.size(); row++) {
            int setting = table.text(row, "setting").equals("A") ? 0 : 1;
            pulls.add(new Observation(0, row + 1, row / 3, setting, 100 * Math.log(table.number(row, "power_kw"))));
        }
        return pulls;
    }

    private static List<Observation> treated(String name) {
        Table table = Table.read(name);
        List<Observation> pulls = new ArrayList<>();
        for (int row = 0; row < table.size(); row++) {
            pulls.add(new Observation(
                    0, table.number(row, "min"), 0, (int) table.number(row, "treat"), table.number(row, "power")));
        }
        return pulls;
    }

    private static java.util.Comparator<Double> nearly() {
        return (a, b) -> Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(b)) ? 0 : Double.compare(a, b);
    }
}
