package org.pullproof.changes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlannerTest {
    /** Table of section 6 of the method: smallest gain seen, for scatters of 0.3, 0.5, 0.7 and 1.0 %, printed to 0.1. */
    @ParameterizedTest
    @CsvSource({
        "A-B, 1, 2.5, 2.8, 3.1, 3.6",
        "A-B, 3, 1.6, 2.1, 2.6, 3.4",
        "A-B, 6, 1.3, 1.8, 2.3, 3.2",
        "A-B-A, 1, 1.9, 2.2, 2.5, 3.1",
        "A-B-A, 2, 1.2, 1.5, 1.9, 2.5",
        "A-B-A, 3, 0.9, 1.3, 1.6, 2.2",
        "A-B-A, 4, 0.8, 1.1, 1.5, 2.1",
        "A-B-A-B, 2, 1.0, 1.3, 1.6, 2.2",
        "A-B-A-B, 3, 0.8, 1.1, 1.4, 2.0",
        "A-B-A-B-A, 1, 1.2, 1.5, 1.8, 2.4",
        "A-B-A-B-A, 2, 0.8, 1.1, 1.4, 1.9",
        "A-B-A-B-A, 3, 0.6, 0.9, 1.2, 1.7",
        "A-B-A-B-A, 4, 0.6, 0.8, 1.1, 1.5",
        "A-B-A-B-A-B-A, 2, 0.6, 0.9, 1.1, 1.6",
        "A-B-A-B-A-B-A, 3, 0.5, 0.7, 1.0, 1.4",
        "A-B-C-D-E-F, 2, 1.5, 2.0, 2.5, 3.4",
        "A-B-C-D-E-F, 3, 1.2, 1.7, 2.3, 3.2",
        "A-B-C-D-E-F, 4, 1.1, 1.6, 2.1, 3.0",
        "A-B-C-D-E-F-A, 1, 2.2, 2.5, 3.0, 3.6",
        "A-B-C-D-E-F-A, 2, 1.2, 1.7, 2.2, 3.0",
        "A-B-C-D-E-F-A, 3, 1.0, 1.4, 1.9, 2.6",
        "A-B-C-A-D-E-A-F-A, 2, 1.2, 1.7, 2.3, 3.1",
        "A-B-C-A-D-E-A-F-A, 3, 1.0, 1.5, 2.0, 2.8",
        "A-B-A-C-A-D-A-E-A-F-A, 1, 1.4, 1.9, 2.3, 3.1",
        "A-B-A-C-A-D-A-E-A-F-A, 2, 0.9, 1.3, 1.8, 2.5",
        "A-B-A-C-A-D-A-E-A-F-A, 3, 0.8, 1.1, 1.6, 2.2"
    })
    void aPlanSeesWhatTheTableSays(String order, int pulls, double at03, double at05, double at07, double at10) {
        assertThat(seen(0.3, order, pulls)).isCloseTo(at03, within(0.1));
        assertThat(seen(0.5, order, pulls)).isCloseTo(at05, within(0.1));
        assertThat(seen(0.7, order, pulls)).isCloseTo(at07, within(0.1));
        assertThat(seen(1.0, order, pulls)).isCloseTo(at10, within(0.1));
    }

    private static double seen(double scatter, String order, int pulls) {
        return new Planner(scatter).of(List.of(order.split("-")), pulls).detectablePercent();
    }

    /** Rules of thumb of section 6 at a scatter of 0.5 %: +1 % A-B-A-B-A with 2–3 each, +2 % A-B-A with 2, +3 % A-B-A with 1. */
    @ParameterizedTest
    @CsvSource({"1, A-B-A-B-A, 3", "2, A-B-A, 2", "3, A-B-A, 1"})
    void theLeastEffortForAGainIsThatOfTheRuleOfThumb(double gain, String order, int pulls) {
        Plan plan = new Planner(0.5).forGain(gain, 2, OptionalInt.empty()).orElseThrow();
        assertThat(String.join("-", plan.order())).isEqualTo(order);
        assertThat(plan.pullsPerSetup()).isEqualTo(pulls);
    }

    @ParameterizedTest
    @CsvSource({"2", "3", "6"})
    void everyPlanOfferedComesBackToTheBase(int settings) {
        Plan plan = new Planner(0.5).forGain(2, settings, OptionalInt.empty()).orElseThrow();
        assertThat(plan.order().stream().distinct()).hasSize(settings);
        assertThat(plan.order()).first().isEqualTo(plan.order().get(plan.order().size() - 1));
        assertThat(plan.controlPulls()).isPositive();
    }

    @Test
    void aPlanThatThereIsNoTimeForIsNotOffered() {
        assertThat(new Planner(0.5).forGain(0.8, 2, OptionalInt.of(9))).isEmpty();
        Plan sharpest = new Planner(0.5).sharpest(2, OptionalInt.of(9)).orElseThrow();
        assertThat(sharpest.totalPulls()).isLessThanOrEqualTo(9);
    }

    @Test
    void aGainTooSmallForAnyDayIsNotPromised() {
        assertThat(new Planner(1.0).forGain(0.2, 2, OptionalInt.empty())).isEmpty();
    }

    @Test
    void oneSetupAloneIsNoPlan() {
        assertThatThrownBy(() -> new Planner().of(List.of("A", "A"), 3))
                .hasMessage("A plan visits at least two setups with at least one pull each.");
    }
}
