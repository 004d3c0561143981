package org.pullproof.tuneup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pullproof.tuneup.TuneUpSamples.WHEN;
import static org.pullproof.tuneup.TuneUpSamples.step;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.tuneup.Step.Kind;
import org.pullproof.tuneup.TuneUpFindings.Block;
import org.pullproof.tuneup.TuneUpFindings.PlugFinding;
import org.pullproof.tuneup.TuneUpFindings.StepState;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;
import org.pullproof.units.UnitSystem;

class TuneUpAssessorTest {
    /** a: look · b: plugs and cover off · c: fit plugs · gate · r: run it. */
    private static final StepGraph GRAPH = new StepGraph(
            "small",
            "small",
            List.of(
                    step("a", Kind.WORK, List.of(), List.of(), List.of()),
                    step("b", Kind.WORK, List.of("a"), List.of("plugs", "cover"), List.of()),
                    step("c", Kind.WORK, List.of("b"), List.of(), List.of("plugs")),
                    step("g", Kind.START_GATE, List.of("c"), List.of(), List.of()),
                    step("r", Kind.RUNNING, List.of("g"), List.of("hose"), List.of())),
            Map.of());

    private final Ticking ticking = new Ticking(GRAPH);

    @Test
    void beforeAnythingIsDoneTheFirstStepIsDueAndTheStartIsOpen() {
        TuneUpFindings findings = assess(TuneUp.notBegun());
        assertEquals("now waits waits waits waits", states(findings));
        assertTrue(findings.startIsOpen());
        assertEquals(
                "None of five steps is done. Nothing is off the car: the tune-up does not stand in the way of a start.",
                findings.answer().plain());
    }

    @Test
    void partsThatAreOffStandInTheAnswer() {
        TuneUpFindings findings = assess(ticked("a", "b"));
        assertEquals(
                "Two of five steps are done. It **may not be started**: plugs and cover are still off.",
                findings.answer().marked());
    }

    @Test
    void aStepThatFitsPartsBringsThemBack() {
        TuneUpFindings findings = assess(ticked("a", "b", "c"));
        assertEquals(
                List.of("cover"),
                findings.offCar().stream().map(part -> part.part()).toList());
    }

    @Test
    void takingTheTickOfTheFittingStepAwayPutsItsPartsOnTheShelfAgain() {
        TuneUpFindings findings = assess(ticking.untick(ticked("a", "b", "c"), "c"));
        assertEquals(2, findings.offCar().size());
    }

    @Test
    void theGateWaitsForTheStepWhosePartIsNotBack() {
        StepState gate = assess(ticked("a", "b", "c")).steps().get(3);
        assertEquals(List.of("b"), gate.waitsFor());
    }

    @Test
    void theGateCannotBeTickedWhileAPartIsOff() {
        TuneUp coverOff = ticked("a", "b", "c");
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> ticking.tick(coverOff, "g", WHEN));
        assertTrue(String.valueOf(refused.getMessage()).contains("cover: still off"), refused.getMessage());
    }

    @Test
    void withEverythingBackTheGateItselfIsWhatRemains() {
        TuneUpFindings findings = assess(ticked("a", "b", "c").withBack("cover"));
        assertEquals(
                List.of(new Block("start gate: not ticked", Optional.of("g"), Optional.empty())),
                findings.startBlockedBy());
    }

    @Test
    void tickingTheGatePutsNothingBack() {
        TuneUp passed = ticking.tick(ticked("a", "b", "c").withBack("cover"), "g", WHEN);
        assertEquals(
                List.of(new Block("cover: still off", Optional.of("b"), Optional.of("cover"))),
                assess(passed.withoutBack("cover")).startBlockedBy());
    }

    @Test
    void aPartTakenOffAgainIsOffThoughItHadBeenBack() {
        TuneUp onceMore = ticking.tick(ticking.untick(ticked("a", "b").withBack("cover"), "b"), "b", WHEN);
        assertEquals(2, assess(onceMore).offCar().size());
    }

    @Test
    void aStepWhoseNeedIsNotDoneCannotBeTicked() {
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> ticking.tick(TuneUp.notBegun(), "c", WHEN));
        assertEquals("Step c waits for b: tick that first.", refused.getMessage());
    }

    @Test
    void aStepThatOthersBuildOnKeepsItsTick() {
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> ticking.untick(ticked("a", "b"), "a"));
        assertEquals("Step a came before b, which is ticked: take that tick away first.", refused.getMessage());
    }

    @Test
    void anUnknownPartIsRefusedWithThePartsThereAre() {
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> ticking.back(TuneUp.notBegun(), "propeller"));
        assertEquals(
                "\"propeller\" is no part of this tune-up; its parts are plugs, cover, hose.", refused.getMessage());
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "0.040, 20, -",
                "0.035, 18, -",
                "0.045, 22, -",
                "0.052, 20, 'set to 0.052 in, wider than the profile''s 0.035 to 0.045 in'",
                "0.040, 30, 'tightened to 30 lb-ft, more than the profile''s 18 to 22 lb-ft'"
            })
    void aPlugOutsideTheProfilesRangeIsRemarked(String gap, String torque, String remark) {
        PlugFinding plug =
                assess(TuneUp.notBegun().withPlug(plug(1, gap, torque))).plugs().get(0);
        assertEquals(Optional.ofNullable(remark), plug.remark().map(words -> words.replace('\u00a0', ' ')));
    }

    @Test
    void aGapUnlikeTheOthersIsRemarked() {
        TuneUp tuneUp = TuneUp.notBegun()
                .withPlug(plug(1, "0.040", "20"))
                .withPlug(plug(2, "0.040", "20"))
                .withPlug(plug(3, "0.045", "20"));
        List<Optional<String>> remarks =
                assess(tuneUp).plugs().stream().map(PlugFinding::remark).toList();
        assertEquals(
                List.of(Optional.empty(), Optional.empty(), Optional.of("the middle of the gaps set is 0.040\u00a0in")),
                remarks);
    }

    @Test
    void anInventedGraphWithAStepBeforeItsNeedIsRefused() {
        List<Step> steps = List.of(
                step("a", Kind.WORK, List.of("b"), List.of(), List.of()),
                step("b", Kind.WORK, List.of("a"), List.of(), List.of()));
        assertThrows(IllegalArgumentException.class, () -> new StepGraph("round", "round", steps, Map.of()));
    }

    private TuneUp ticked(String... steps) {
        TuneUp tuneUp = TuneUp.notBegun();
        for (String step : steps) {
            tuneUp = ticking.tick(tuneUp, step, WHEN);
        }
        return tuneUp;
    }

    private static PlugRecord plug(int cylinder, String gap, String torque) {
        return new PlugRecord(
                cylinder,
                Optional.of(Quantity.of("0.044", Unit.IN)),
                Optional.of(Quantity.of(gap, Unit.IN)),
                Optional.of(Quantity.of(torque, Unit.LB_FT)));
    }

    private static TuneUpFindings assess(TuneUp tuneUp) {
        return new TuneUpAssessor(new StepGraphs(List.of(GRAPH)))
                .assess(tuneUp, TuneUpSamples.engine("small"), new Figures(UnitSystem.US), Optional.empty());
    }

    private static String states(TuneUpFindings findings) {
        return String.join(
                " ", findings.steps().stream().map(step -> step.state().key()).toList());
    }
}
