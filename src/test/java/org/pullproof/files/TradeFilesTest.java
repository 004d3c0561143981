package org.pullproof.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.pullproof.health.TestKind;
import org.pullproof.tuneup.Step;
import org.pullproof.tuneup.StepGraph;
import org.pullproof.tuneup.TuneUp;
import org.pullproof.tuneup.TuneUpAssessor;
import org.pullproof.tuneup.TuneUpFindings;
import org.pullproof.tuneup.TuneUpFindings.Block;
import org.pullproof.tuneup.TuneUpFindings.OffCar;
import org.pullproof.tuneup.TuneUpFindings.State;
import org.pullproof.tuneup.TuneUpFindings.StepState;
import org.pullproof.tuneup.TuneUpSamples;
import org.pullproof.units.Figures;
import org.pullproof.units.UnitSystem;

/** Properties of the defaults of the trade. Their figures are judgement: common practice, no source. */
class TradeFilesTest {
    private static final TradeFiles FILES = new TradeFiles();
    private static final Figures US = new Figures(UnitSystem.US);

    static Stream<StepGraph> graphs() {
        return FILES.stepGraphs().all().stream();
    }

    @ParameterizedTest
    @MethodSource("graphs")
    void everyStepTickedInListedOrderFindsItsNeedsDone(StepGraph graph) {
        TuneUp tuneUp = TuneUp.notBegun();
        for (Step step : graph.steps()) {
            tuneUp = TuneUpSamples.allBack(graph, tuneUp);
            tuneUp = TuneUpSamples.tick(graph, tuneUp, step.id());
        }
        assertEquals(graph.steps().size(), assess(graph, tuneUp).doneCount());
    }

    @ParameterizedTest
    @MethodSource("graphs")
    void everyPartThatMustBeBackBlocksTheStartUntilItIsBack(StepGraph graph) {
        for (Step step : graph.steps()) {
            TuneUp upToHere = TuneUpSamples.upTo(graph, step.id());
            for (String part : step.backBeforeStart()) {
                assertTrue(blocks(graph, upToHere).contains(part), () -> step.id() + " leaves " + part + " off");
                assertFalse(blocks(graph, upToHere.withBack(part)).contains(part), () -> part + " is back");
            }
        }
    }

    @ParameterizedTest
    @MethodSource("graphs")
    void everyPartTakenOffLiesOnTheShelf(StepGraph graph) {
        for (Step step : graph.steps()) {
            Set<String> shelf = assess(graph, TuneUpSamples.upTo(graph, step.id())).offCar().stream()
                    .map(OffCar::part)
                    .collect(Collectors.toSet());
            assertTrue(shelf.containsAll(step.takesOff()), () -> step.id() + " takes off " + step.takesOff());
        }
    }

    @ParameterizedTest
    @MethodSource("graphs")
    void nothingRunsBeforeTheStartGate(StepGraph graph) {
        TuneUpFindings findings =
                assess(graph, TuneUpSamples.upTo(graph, graph.gate().needs().get(0)));
        List<State> running = findings.steps().stream()
                .filter(step -> step.step().kind() != Step.Kind.WORK)
                .map(StepState::state)
                .distinct()
                .toList();
        assertEquals(List.of(State.WAITS), running);
    }

    /** Trade knowledge of the project, tables of the tune-up: how many steps each kind lists; common practice, no source. */
    @ParameterizedTest
    @CsvSource({"v-distributor, 20, o", "inline-coil-on-plug, 14, m", "flat-coil-on-plug, 15, n"})
    void theListedKindsHaveAllTheirSteps(String id, int steps, String gate) {
        StepGraph graph =
                graphs().filter(each -> each.id().equals(id)).findFirst().orElseThrow();
        assertEquals(
                steps + " " + gate, graph.steps().size() + " " + graph.gate().id());
    }

    @ParameterizedTest
    @EnumSource(TestKind.class)
    void everyTestHasCautions(TestKind test) {
        assertFalse(FILES.cautions().getOrDefault(test.key(), List.of()).isEmpty());
    }

    @ParameterizedTest
    @CsvSource({
        "balance, tens of kilovolts",
        "balance, carbon monoxide",
        "compression-dry, Disable fuel and ignition",
        "compression-dry, never the starter's",
        "leakdown, no tool on the crank bolt",
        "leakdown, Eye protection",
        "coolant-gas, below 50 °C",
        "dyno-pull, extraction and a carbon monoxide alarm",
        "dyno-pull, Lift at once on knock",
        "first-start, do not start the engine",
        "filter-cut, go to collection",
        "change, emission control are refitted"
    })
    void theUsualCautionStandsAtTheAct(String act, String words) {
        assertTrue(FILES.cautions().getOrDefault(act, List.of()).stream().anyMatch(caution -> caution.contains(words)));
    }

    @Test
    void theLastCautionGivesWayToTheManualAndTheProfessional() {
        assertTrue(FILES.lastCaution().matches(".*service manual and a licensed professional take precedence.*"));
    }

    @ParameterizedTest
    @CsvSource({"balance, 8, 20, 0", "coolant-gas, 4, 15, 40", "compression-dry, 8, 130, 35", "leakdown-all, 4, 90, 90"
    })
    void testsCostWhatTheTableOfTheTradeSays(String test, int cylinders, int minutes, double dollars) {
        assertEquals(minutes, FILES.testPrices().of(test).minutes(cylinders));
        assertEquals(dollars, FILES.testPrices().of(test).first().value());
    }

    private static TuneUpFindings assess(StepGraph graph, TuneUp tuneUp) {
        return new TuneUpAssessor(FILES.stepGraphs())
                .assess(tuneUp, TuneUpSamples.engine(graph.id()), US, Optional.empty());
    }

    private static Set<String> blocks(StepGraph graph, TuneUp tuneUp) {
        return assess(graph, tuneUp).startBlockedBy().stream()
                .map(Block::what)
                .map(what -> what.replaceAll(": (still off|not confirmed)$", ""))
                .collect(Collectors.toSet());
    }
}
