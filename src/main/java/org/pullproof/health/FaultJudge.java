package org.pullproof.health;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.pullproof.health.faults.Candidate;
import org.pullproof.health.faults.EngineState;
import org.pullproof.health.faults.Explainer;
import org.pullproof.health.faults.Fault;
import org.pullproof.health.faults.FaultConstants;
import org.pullproof.health.faults.FaultModel;
import org.pullproof.health.faults.FaultPosterior;
import org.pullproof.health.faults.Pair;
import org.pullproof.health.faults.Part;

/** What the fault model brings to the verdict: whether cylinders and sealing are sound, what is called faulty, what to repeat. */
final class FaultJudge {
    private final Evidence evidence;
    private final FaultPosterior posterior;
    private final FaultConstants.Verdicts limits;
    private final Explainer explainer;
    private final PartWords words;
    private final Map<Integer, Set<Part>> doubtful = new HashMap<>();

    FaultJudge(Evidence evidence, FaultModel model) {
        this.evidence = evidence;
        this.limits = model.constants().verdicts();
        this.posterior = model.weigh(new WeighedReadings(evidence, model.constants()).all());
        this.explainer = new Explainer(posterior);
        this.words = new PartWords(evidence);
        evidence.cylinders()
                .forEach(cylinder ->
                        doubtful.put(cylinder, explainer.doubtful(cylinder).keySet()));
    }

    FaultPosterior posterior() {
        return posterior;
    }

    Explainer explainer() {
        return explainer;
    }

    /** Whether anything was read of a cylinder. */
    boolean anythingRead() {
        return posterior.readings().cylinders().stream()
                .anyMatch(one -> !one.parts().isEmpty());
    }

    /** Whether a cylinder is more likely at fault than not. */
    boolean called(int cylinder) {
        return posterior.p(cylinder, Fault.SOUND) < limits.called();
    }

    /** Whether nothing is held against a cylinder. */
    boolean clear(int cylinder) {
        return posterior.p(cylinder, Fault.SOUND) >= limits.sound();
    }

    /** Readings of a cylinder that are most likely blunders. */
    Set<Part> doubtful(int cylinder) {
        return doubtful.getOrDefault(cylinder, Set.of());
    }

    /** Yes: nothing but what is as good as sound. */
    boolean sound() {
        return posterior.sound() >= limits.sound();
    }

    /** No: sound is unlikely, and something is called faulty. */
    boolean notSound() {
        return posterior.sound() <= limits.notSound() && somethingCalled();
    }

    private boolean somethingCalled() {
        return evidence.cylinders().stream().anyMatch(this::called)
                || !pairsCalled().isEmpty()
                || !statesCalled().isEmpty();
    }

    List<Pair> pairsCalled() {
        return posterior.readings().pairs().stream()
                .filter(pair -> posterior.pairs().getOrDefault(pair, 0.0) >= limits.called())
                .toList();
    }

    List<EngineState> statesCalled() {
        return List.of(EngineState.RINGS_ALL, EngineState.CAM_TIMING, EngineState.TEST_SPOILED).stream()
                .filter(state -> posterior.p(state) >= limits.called())
                .toList();
    }

    /** Cylinders called faulty for themselves, not for a gasket they share. */
    List<Integer> cylindersCalled() {
        return evidence.cylinders().stream()
                .filter(this::called)
                .filter(cylinder -> pairsCalled().stream().noneMatch(pair -> pair.has(cylinder)))
                .toList();
    }

    List<Ground> grounds() {
        if (!anythingRead()) {
            return List.of();
        }
        if (sound()) {
            return List.of(Ground.speaksFor(
                    "", "The readings fit sound cylinders: " + FaultWords.chance(posterior.sound()) + " (judgement)."));
        }
        Ground.Weight weight = notSound() ? Ground.Weight.FAILS : Ground.Weight.DOUBTS;
        List<Ground> grounds = new ArrayList<>();
        pairsCalled()
                .forEach(pair -> grounds.add(
                        ground(weight, pairClause(pair), posterior.pairs().getOrDefault(pair, 0.0))));
        cylindersCalled().forEach(cylinder -> grounds.add(ground(weight, cylinder)));
        statesCalled()
                .forEach(state -> grounds.add(
                        ground(weight, "most likely the whole engine: " + FaultWords.name(state), posterior.p(state))));
        if (grounds.isEmpty()) {
            grounds.add(Ground.doubts(
                    "the readings leave it open",
                    "The readings leave it open: sound cylinders " + FaultWords.chance(posterior.sound())
                            + " (judgement)."));
        }
        return grounds;
    }

    private static Ground ground(Ground.Weight weight, String clause, double p) {
        return new Ground(weight, clause, Phrase.capital(clause) + ": " + FaultWords.chance(p) + " (judgement).");
    }

    private Ground ground(Ground.Weight weight, int cylinder) {
        String clause = FaultWords.clause(cylinder, posterior.candidates(cylinder), limits);
        return new Ground(
                weight,
                clause,
                Phrase.capital(clause) + " (" + likeliest(cylinder) + ", judgement)." + misfit(cylinder));
    }

    private String likeliest(int cylinder) {
        return posterior.candidates(cylinder).entrySet().stream()
                .sorted(Map.Entry.<Candidate, Double>comparingByValue(Comparator.reverseOrder()))
                .filter(entry -> entry.getValue() >= 0.01)
                .limit(3)
                .map(entry -> FaultWords.name(entry.getKey()) + " " + FaultWords.chance(entry.getValue()))
                .collect(Collectors.joining(", "));
    }

    private String misfit(int cylinder) {
        return posterior.p(cylinder, Fault.OTHER) < limits.called()
                ? ""
                : explainer
                        .misfit(cylinder)
                        .map(part -> " The readings of this cylinder do not fit one hole: repeat " + part.words() + ".")
                        .orElse("");
    }

    private static String pairClause(Pair pair) {
        return "the gasket between cylinders " + pair.one() + " and " + pair.other() + " leaks";
    }

    /** Readings to repeat, one sentence each. */
    List<String> repeats() {
        List<String> repeats = new ArrayList<>();
        for (int cylinder : evidence.cylinders()) {
            for (Part part : doubtful(cylinder)) {
                repeats.add("Cylinder " + cylinder + ": repeat " + part.words() + "; " + words.of(cylinder, part)
                        + " does not fit its other readings.");
            }
        }
        return repeats;
    }
}
