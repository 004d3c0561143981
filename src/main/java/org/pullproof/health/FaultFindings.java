package org.pullproof.health;

import java.util.List;
import java.util.Optional;
import org.pullproof.health.faults.Fault;
import org.pullproof.health.faults.FaultPosterior;
import org.pullproof.health.faults.Pair;
import org.pullproof.health.nexttest.NextTest;

/**
 * What the fault model makes of the readings. Chances rest on the readings and on constants of judgement.
 *
 * @param soundProbability that nothing is wrong with cylinders, sealing, cam timing or test; bottom end and cooling not counted
 * @param read whether anything was read of a cylinder; without it the chance is only what is believed beforehand
 * @param cylinders by cylinder, 1 first
 * @param engineWide what may hold for the whole engine, likeliest first
 * @param pairs gaskets between neighbours that may leak, likeliest first
 * @param nextTests what is worth doing next, in order
 * @param nextWords what is said where no test is proposed, else empty
 * @param posterior the chances themselves, for who weighs money with them; absent where nothing was weighed
 */
public record FaultFindings(
        double soundProbability,
        boolean read,
        List<CylinderChances> cylinders,
        List<EngineChance> engineWide,
        List<PairChance> pairs,
        List<ProposedTest> nextTests,
        String nextWords,
        Optional<FaultPosterior> posterior) {
    public FaultFindings {
        cylinders = List.copyOf(cylinders);
        engineWide = List.copyOf(engineWide);
        pairs = List.copyOf(pairs);
        nextTests = List.copyOf(nextTests);
    }

    /** The chances themselves follow from the same readings as all else and have no value of their own to compare. */
    @Override
    public boolean equals(Object other) {
        return other instanceof FaultFindings findings && values().equals(findings.values());
    }

    @Override
    public int hashCode() {
        return values().hashCode();
    }

    private List<Object> values() {
        return List.of(soundProbability, read, cylinders, engineWide, pairs, nextTests, nextWords);
    }

    /** Nothing was weighed. */
    public static FaultFindings none() {
        return new FaultFindings(0, false, List.of(), List.of(), List.of(), List.of(), "", Optional.empty());
    }

    /**
     * What may hold for one cylinder.
     *
     * @param number of the cylinder
     * @param calledFaulty whether it is more likely at fault than not
     * @param candidates likeliest first
     */
    public record CylinderChances(int number, boolean calledFaulty, List<CandidateChance> candidates) {
        public CylinderChances {
            candidates = List.copyOf(candidates);
        }
    }

    /**
     * One candidate for one cylinder.
     *
     * @param words what it is: "exhaust valve leaks"
     * @param fits readings that fit it, one sentence each
     * @param against readings that speak against it
     */
    public record CandidateChance(
            Fault fault, String words, double probability, List<String> fits, List<String> against) {
        public CandidateChance {
            fits = List.copyOf(fits);
            against = List.copyOf(against);
        }
    }

    /**
     * Something that concerns the whole engine.
     *
     * @param key {@code rings-all}, {@code bottom-end}, …
     * @param words what it is
     */
    public record EngineChance(String key, String words, double probability) {}

    /** The gasket between two neighbours. */
    public record PairChance(Pair pair, double probability) {}

    /**
     * A test that is proposed, in words.
     *
     * @param why one sentence
     */
    public record ProposedTest(NextTest test, String why) {}

    /** What may hold for one cylinder; empty where nothing was weighed. */
    public Optional<CylinderChances> of(int cylinder) {
        return cylinders.stream().filter(one -> one.number() == cylinder).findFirst();
    }
}
