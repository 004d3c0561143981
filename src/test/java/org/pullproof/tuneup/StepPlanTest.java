package org.pullproof.tuneup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.pullproof.tuneup.TuneUpSamples.WHEN;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.pullproof.files.TradeFiles;
import org.pullproof.tuneup.Step.Kind;

/** Plans of the program's own steps, which are common practice without a source. */
class StepPlanTest {
    private static final int SUBSETS = 200;

    static Stream<StepGraph> graphs() {
        return new TradeFiles().stepGraphs().all().stream();
    }

    private static StepGraph graph(String id) {
        return graphs().filter(graph -> graph.id().equals(id)).findFirst().orElseThrow();
    }

    private static StepPlan plan(StepGraph graph, String... wanted) {
        return new StepPlan(graph, new Ticking(graph).want(TuneUp.notBegun(), List.of(wanted)));
    }

    private static List<String> ids(StepPlan plan) {
        return plan.graph().steps().stream().map(Step::id).toList();
    }

    @Test
    void plugsAndWiresNeedNoCompressionTestAndNoOil() {
        assertThat(ids(plan(graph("v-distributor"), "plugs and wires only")))
                .containsExactly("a", "b", "c", "d", "e", "h", "i", "j", "o", "p");
    }

    @Test
    void compressionComesBeforeThePlugsBecauseTheyAreOffAnyway() {
        StepPlan plan = plan(graph("v-distributor"), "compression test first");

        assertThat(ids(plan)).containsSubsequence("e", "f", "h");
        assertThat(plan.because()).contains("Step f comes before step h, because the plugs are off anyway.");
    }

    @Test
    void oilDrainsWarmBeforeTheEngineCools() {
        StepPlan plan = plan(graph("v-distributor"), "full tune-up");

        assertThat(ids(plan))
                .isEqualTo(ids(plan(graph("v-distributor"), "all")))
                .containsSubsequence("a", "l", "b");
        assertThat(plan.because()).first().asString().contains("oil drains warm");
    }

    /** Listed: a 20, l 40, b 60 of which 40 pass while the oil drains, c 10: 20 + 40 + 20 + 10 and the gate 15, start 10. */
    @Test
    void warmWorkCountsTowardsTheCooling() {
        assertThat(plan(graph("v-distributor"), "c", "l").minutesLeft(Set.of())).isEqualTo(115);
    }

    @Test
    void aStepThatIsDoneStaysInThePlanThoughItIsNotWanted() {
        StepGraph graph = graph("v-distributor");
        TuneUp tuneUp =
                new Ticking(graph).want(TuneUp.notBegun().withDone("a", WHEN).withDone("l", WHEN), List.of("n"));

        assertThat(ids(new StepPlan(graph, tuneUp))).contains("l", "n");
    }

    @Test
    void aPlanThatIsNotThereIsRefusedWithThoseThatAre() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> plan(graph("v-distributor"), "everything"))
                .withMessageContaining("plugs and wires only");
    }

    @ParameterizedTest
    @MethodSource("graphs")
    void whateverIsWantedNeedsComeFirstAndAPartComesOffOnce(StepGraph graph) {
        Random random = new Random(20260614);
        for (int i = 0; i < SUBSETS; i++) {
            List<Step> steps =
                    new StepPlan(graph, subset(graph, random)).graph().steps();
            Set<String> before = new HashSet<>();
            Set<String> off = new HashSet<>();
            for (Step step : steps) {
                assertThat(before).containsAll(step.needs());
                assertThat(off).containsAll(step.putsBack());
                assertThat(off.stream().filter(step.takesOff()::contains)).isEmpty();
                before.add(step.id());
                off.addAll(step.takesOff());
                off.removeAll(step.putsBack());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("graphs")
    void whateverIsWantedTheStartWaitsUntilEverythingIsBack(StepGraph graph) {
        Random random = new Random(20260615);
        for (int i = 0; i < SUBSETS; i++) {
            TuneUp tuneUp = subset(graph, random);
            for (Step step : new StepPlan(graph, tuneUp).graph().steps()) {
                if (step.kind() == Kind.START_GATE) {
                    TuneUp atTheGate = tuneUp;
                    boolean open = new OffCarShelf(new StepPlan(graph, tuneUp).graph(), tuneUp)
                            .inTheWay()
                            .isEmpty();
                    if (!open) {
                        assertThatIllegalArgumentException()
                                .isThrownBy(() -> new Ticking(graph).tick(atTheGate, step.id(), WHEN));
                    }
                    tuneUp = TuneUpSamples.allBack(graph, tuneUp);
                }
                tuneUp = new Ticking(graph).tick(tuneUp, step.id(), WHEN);
                tuneUp = step.kind() == Kind.RUNNING ? TuneUpSamples.allBack(graph, tuneUp) : tuneUp;
            }
        }
    }

    private static TuneUp subset(StepGraph graph, Random random) {
        Set<String> wanted = new LinkedHashSet<>();
        graph.steps().stream()
                .filter(step -> step.kind() == Kind.WORK && random.nextInt(4) == 0)
                .forEach(step -> wanted.add(step.id()));
        return TuneUp.notBegun().withWanted(wanted);
    }

    @Test
    void aPartLeftOffWithAReasonNoLongerClosesTheGate() {
        StepGraph graph = graph("v-distributor");
        Ticking ticking = new Ticking(graph);
        TuneUp tuneUp = ticking.want(TuneUp.notBegun(), List.of("n"));
        for (String step : List.of("a", "b", "c", "n")) {
            tuneUp = ticking.tick(tuneUp, step, WHEN);
        }
        tuneUp = ticking.back(tuneUp, "battery lead");
        tuneUp = ticking.back(tuneUp, "air cleaner");
        tuneUp = ticking.back(tuneUp, "throttle return spring");
        TuneUp twoOff = tuneUp;
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ticking.tick(twoOff, "o", WHEN))
                .withMessageContaining("breather hose: still off; hot-air duct: still off");

        TuneUp left = ticking.leaveOff(
                ticking.leaveOff(twoOff, "breather hose", "a new one is fitted"), "hot-air duct", "summer");
        assertThat(ticking.tick(left, "o", WHEN).done()).containsKey("o");
    }

    @Test
    void withoutAReasonNothingIsLeftOff() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Ticking(graph("v-distributor")).leaveOff(TuneUp.notBegun(), "breather hose", " "))
                .withMessageContaining("say why");
    }
}
