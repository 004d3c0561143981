package org.pullproof.tuneup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.pullproof.engine.EngineProfile;
import org.pullproof.tuneup.OffCarShelf.Standing;
import org.pullproof.tuneup.Step.Kind;
import org.pullproof.tuneup.TuneUpFindings.Block;
import org.pullproof.tuneup.TuneUpFindings.State;
import org.pullproof.tuneup.TuneUpFindings.StepState;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;

/**
 * Says where a tune-up stands: each step's state, the off-car shelf, what stands in the way of the start, and the plugs.
 * Immutable.
 */
public final class TuneUpAssessor {
    private final StepGraphs graphs;

    public TuneUpAssessor(StepGraphs graphs) {
        this.graphs = graphs;
    }

    /**
     * @param odometer read now, if it was
     * @throws IllegalArgumentException if the profile names a tune-up that is not known
     */
    public TuneUpFindings assess(TuneUp tuneUp, EngineProfile profile, Figures figures, Optional<Quantity> odometer) {
        StepGraph whole = graphs.of(profile, tuneUp);
        StepPlan plan = new StepPlan(whole, tuneUp);
        StepGraph graph = plan.graph();
        OffCarShelf shelf = new OffCarShelf(graph, tuneUp);
        List<StepState> steps = states(graph, tuneUp, shelf.inTheWay());
        List<Block> blocks = blocks(graph, tuneUp, shelf);
        PartsLedger ledger = new PartsLedger(graph, tuneUp, figures, odometer);
        return new TuneUpFindings(
                new TuneUpAnswer(
                                steps,
                                shelf.inTheWay(),
                                blocks.isEmpty(),
                                shelf.parts().isEmpty())
                        .sentence(),
                steps,
                shelf.parts(),
                blocks,
                new PlugRemarks(profile.plugs(), figures).of(tuneUp.plugs()),
                new TuneUpFindings.Plan(
                        whole.plans(),
                        plan.because(),
                        plan.minutesLeft(tuneUp.done().keySet())),
                tuneUp.leftOff().entrySet().stream()
                        .map(left -> left.getKey() + ": " + left.getValue())
                        .toList(),
                new WireRemarks(profile).of(tuneUp),
                ledger.parts(),
                ledger.toBuy(),
                settings(tuneUp.bench().settings(), figures),
                new AfterwardsJudge(graph, tuneUp, figures, odometer).judge());
    }

    private static TuneUpFindings.Settings settings(BaseSettings settings, Figures figures) {
        SettingsWords words = new SettingsWords(settings, figures);
        return new TuneUpFindings.Settings(words.told(), words.timing(), words.remarks());
    }

    /** Once parts were touched, the gate itself has to be ticked: it is the look of a person that nothing was left. */
    private static List<Block> blocks(StepGraph graph, TuneUp tuneUp, OffCarShelf shelf) {
        List<Block> blocks =
                new ArrayList<>(shelf.inTheWay().stream().map(Standing::block).toList());
        if (shelf.touched() && !tuneUp.done().containsKey(graph.gate().id())) {
            blocks.add(
                    new Block("start gate: not ticked", Optional.of(graph.gate().id()), Optional.empty()));
        }
        return blocks;
    }

    private static List<StepState> states(StepGraph graph, TuneUp tuneUp, List<Standing> inTheWay) {
        List<StepState> states = new ArrayList<>();
        boolean nowIsFound = false;
        for (Step step : graph.steps()) {
            List<String> waitsFor = waitsFor(step, tuneUp, inTheWay);
            State state = tuneUp.done().containsKey(step.id())
                    ? State.DONE
                    : !waitsFor.isEmpty() ? State.WAITS : nowIsFound ? State.READY : State.NOW;
            nowIsFound |= state == State.NOW;
            states.add(new StepState(step, state, state == State.WAITS ? waitsFor : List.of()));
        }
        return states;
    }

    /** Ids of the needs not done; the gate and all that runs also wait for the steps whose parts, and for added parts that, are not back. */
    private static List<String> waitsFor(Step step, TuneUp tuneUp, List<Standing> inTheWay) {
        Stream<String> needs =
                step.needs().stream().filter(need -> !tuneUp.done().containsKey(need));
        Stream<String> parts = step.kind() == Kind.WORK
                ? Stream.of()
                : inTheWay.stream().map(standing -> standing.step().orElse(standing.name()));
        return Stream.concat(needs, parts).distinct().toList();
    }
}
