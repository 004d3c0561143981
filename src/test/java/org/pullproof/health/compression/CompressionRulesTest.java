package org.pullproof.health.compression;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.health.HealthFindings.Rule;
import org.pullproof.units.Figures;
import org.pullproof.units.Unit;
import org.pullproof.units.UnitSystem;

class CompressionRulesTest {
    private static final Figures US = new Figures(UnitSystem.US);

    private static List<Rule> rules(double toSeaLevel, double... psi) {
        return Levels.of(Arrays.stream(psi).mapToObj(Unit.PSI::toSi).toList())
                .map(levels -> new CompressionRules(levels, toSeaLevel).judge(US))
                .orElse(List.of());
    }

    private static Rule rule(String name, double... psi) {
        return rules(1, psi).stream()
                .filter(rule -> rule.name().contains(name))
                .findFirst()
                .orElseThrow();
    }

    /** Army TM 5-4210-230-14&amp;P-1, Addendum 2: the lowest at least 75 % of the highest. */
    @ParameterizedTest
    @CsvSource({"160, 120, true", "160, 119, false"})
    void lowestToHighestIsThreeQuarters(double highest, double lowest, boolean met) {
        assertThat(rule("75 %", highest, 155, lowest).met()).isEqualTo(met);
    }

    /** Army TM 1-1500-204-23-1: none 20 % below the average of all (150, 150, 150, x). */
    @ParameterizedTest
    @CsvSource({"113, true", "112, false"})
    void noneIsAFifthBelowTheAverage(double lowest, boolean met) {
        assertThat(rule("average", 150, 150, 150, lowest).met()).isEqualTo(met);
    }

    /** Army TM 10-3930-618-20: not more than 10 psi apart. */
    @ParameterizedTest
    @CsvSource({"115, true", "114, false"})
    void notMoreThanTenPoundsApart(double lowest, boolean met) {
        assertThat(rule("10 psi", 125, lowest).met()).isEqualTo(met);
    }

    /** Car makers' service pages, worked there: 150 psi asks for 105 psi. */
    @ParameterizedTest
    @CsvSource({"150, 105, true", "150, 104, false", "130, 99, false"})
    void makersAskForSeventyPercentAndAHundredPounds(double highest, double lowest, boolean met) {
        assertThat(rule("689", highest, lowest).met()).isEqualTo(met);
    }

    /** Common practice, no source. */
    @ParameterizedTest
    @CsvSource({"150, 135, true", "150, 134, false"})
    void notMoreThanATenthApart(double highest, double lowest, boolean met) {
        assertThat(rule("10 %", highest, lowest).met()).isEqualTo(met);
    }

    @Test
    void theStrictestRuleStandsFirst() {
        assertThat(rules(1, 158, 162, 155))
                .extracting(Rule::name)
                .first()
                .asString()
                .contains("10 psi");
        assertThat(rules(1, 60, 62, 55))
                .extracting(Rule::name)
                .first()
                .asString()
                .contains("689");
    }

    @Test
    void aRuleMetImpliesEveryLaxerRule() {
        for (double lowest = 60; lowest <= 160; lowest += 1) {
            List<Boolean> met =
                    rules(1, 160, 158, lowest).stream().map(Rule::met).toList();
            assertThat(met).isSorted();
        }
    }

    @Test
    void theMakersFloorIsHeldAgainstTheReadingRestatedForSeaLevel() {
        assertThat(rules(101.325 / 83.8, 95, 94))
                .filteredOn(rule -> rule.name().contains("689"))
                .singleElement()
                .satisfies(rule -> assertThat(rule.met()).isTrue())
                .satisfies(rule -> assertThat(rule.found()).contains("restated for sea level the lowest is 114"));
    }

    @Test
    void everyRuleNamesItsSource() {
        assertThat(rules(1, 160, 150))
                .hasSize(5)
                .allSatisfy(rule -> assertThat(rule.source()).isNotBlank());
    }

    @Test
    void oneReadingIsJudgedByNoRule() {
        assertThat(rules(1, 160)).isEmpty();
    }
}
