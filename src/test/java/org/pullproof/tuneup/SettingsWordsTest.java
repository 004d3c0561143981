package org.pullproof.tuneup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;
import org.pullproof.units.UnitSystem;

/** Base and mechanical advance add up to the total at full throttle; the limits are common practice, no source. */
class SettingsWordsTest {
    private static BaseSettings with(BaseSettings settings, Setting setting, String figure, Unit unit) {
        return settings.with(setting, Optional.of(Quantity.of(figure, unit)));
    }

    private static SettingsWords words(BaseSettings settings) {
        return new SettingsWords(settings, new Figures(UnitSystem.US));
    }

    private static CurvePoint point(int rpm, int degrees) {
        return new CurvePoint(Quantity.of(rpm, Unit.RPM), Quantity.of(degrees, Unit.DEGREE));
    }

    private static BaseSettings timed() {
        BaseSettings base = with(BaseSettings.NONE, Setting.BASE_TIMING, "10", Unit.DEGREE);
        return with(with(base, Setting.MECHANICAL, "22", Unit.DEGREE), Setting.PULL_RPM, "3500", Unit.RPM);
    }

    /** By hand: 10 + 22 = 32. */
    @Test
    void basePlusMechanicalIsTheTotalAtFullThrottleAndVacuumStandsApart() {
        BaseSettings settings = with(timed(), Setting.CANISTER_ADVANCE, "12", Unit.DEGREE);
        assertThat(settings.totalDegrees()).hasValue(32);
        assertThat(words(settings).timing())
                .hasValueSatisfying(sentence -> assertThat(sentence)
                        .contains("total 32° at 3,500")
                        .contains("adds 12° at part load, next to nothing at full throttle"));
    }

    @Test
    void withoutTheMechanicalAdvanceThereIsNoTotal() {
        BaseSettings base = with(BaseSettings.NONE, Setting.BASE_TIMING, "10", Unit.DEGREE);
        assertThat(base.totalDegrees()).isEmpty();
        assertThat(words(base).timing())
                .hasValueSatisfying(words -> assertThat(words).contains("is not known before"));
    }

    @ParameterizedTest
    @CsvSource({"97.9, 1", "98, 0", "100, 0"})
    void aThrottleThatOpensLessThan98PercentIsRemarked(String percent, int remarks) {
        assertThat(words(with(BaseSettings.NONE, Setting.THROTTLE, percent, Unit.PERCENT))
                        .remarks())
                .hasSize(remarks);
    }

    @ParameterizedTest
    @CsvSource({"20, 1", "60, 0"})
    void aCanisterThatLosesItsVacuumWithinAMinuteIsRemarked(String seconds, int remarks) {
        assertThat(words(with(BaseSettings.NONE, Setting.CANISTER_HOLDS, seconds, Unit.SECOND))
                        .remarks())
                .hasSize(remarks);
    }

    @Test
    void aFallingCurveIsRemarkedWhereItFalls() {
        BaseSettings settings = BaseSettings.NONE.withCurve(List.of(point(2400, 16), point(800, 0), point(1600, 18)));
        assertThat(words(settings).remarks()).singleElement().asString().contains("falls from 18° to 16° at 2,400");
    }

    /** By hand: half-way from 10° at 3000 to 20° at 4000 rpm stands 15° at 3500; told are 22°. */
    @Test
    void aCurveThatReadsAnotherAdvanceThanIsToldIsRemarked() {
        BaseSettings settings = timed().withCurve(List.of(point(3000, 10), point(4000, 20)));
        assertThat(words(settings).remarks()).singleElement().asString().contains("The curve reads 15°");
    }
}
