package org.pullproof.tuneup;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.pullproof.tuneup.Step.Kind;

class StepOrderTest {
    private static Step step(String id, String... needs) {
        return TuneUpSamples.step(id, Kind.WORK, List.of(needs), List.of(), List.of());
    }

    private static void require(Step... steps) {
        new StepOrder("mine", List.of(steps)).require();
    }

    @Test
    void stepsBehindTheirNeedsStand() {
        assertThatCode(() -> require(step("a"), step("b", "a"), step("c", "a", "b")))
                .doesNotThrowAnyException();
    }

    @Test
    void aNeedThatIsNoStepIsNamed() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> require(step("a"), step("b", "x")))
                .withMessage("Step b of mine needs \"x\", which is no step; the steps are a b");
    }

    @Test
    void aCircleIsNamedAllTheWayRound() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> require(step("a"), step("b", "a", "d"), step("c", "b"), step("d", "c")))
                .withMessage("The steps of mine wait for each other in a circle: b needs d needs c needs b;"
                        + " take one of these needs away");
    }

    @Test
    void aStepThatNeedsItselfIsACircle() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> require(step("a", "a")))
                .withMessageContaining("a needs a");
    }

    @Test
    void aStepBeforeItsNeedIsToldWhereToGo() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> require(step("b", "a"), step("a")))
                .withMessage("Step b of mine stands before step a, which it needs: move it behind");
    }

    @Test
    void anIdStandsOnce() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> require(step("a"), step("a")))
                .withMessageContaining("stands there twice");
    }

    @Test
    void aPartThatNothingTookOffIsNotPutBack() {
        Step back = TuneUpSamples.step("a", Kind.WORK, List.of(), List.of(), List.of("cover"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> require(back))
                .withMessageContaining("puts back \"cover\"");
    }
}
