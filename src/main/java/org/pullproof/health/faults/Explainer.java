package org.pullproof.health.faults;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which readings of a cylinder speak for a candidate and which against it, and which may be blunders (section 7 of the method).
 *
 * <pre>  Δ_k = ln[p(f)/p(f′)] − the same without reading k</pre>
 */
public final class Explainer {
    private static final double NOTHING = 1e-300;

    private final FaultPosterior posterior;
    private final Map<String, Map<Candidate, Double>> withoutOne = new HashMap<>();

    public Explainer(FaultPosterior posterior) {
        this.posterior = posterior;
    }

    /**
     * What each reading of a cylinder says of a candidate beside a rival: Δ by reading, positive where it fits the candidate
     * better.
     */
    public Map<Part, Double> contributions(int cylinder, Candidate candidate, Candidate rival) {
        Map<Part, Double> contributions = new EnumMap<>(Part.class);
        double with = logRatio(posterior.candidates(cylinder), candidate, rival);
        for (Part part : readings(cylinder).parts()) {
            contributions.put(part, with - logRatio(without(cylinder, part), candidate, rival));
        }
        return contributions;
    }

    private static double logRatio(Map<Candidate, Double> chances, Candidate one, Candidate other) {
        return Math.log(Math.max(chances.getOrDefault(one, 0.0), NOTHING))
                - Math.log(Math.max(chances.getOrDefault(other, 0.0), NOTHING));
    }

    private CylinderReadings readings(int cylinder) {
        return posterior.readings().cylinders().get(cylinder - 1);
    }

    private Map<Candidate, Double> without(int cylinder, Part part) {
        return withoutOne.computeIfAbsent(cylinder + " " + part, key -> {
            CylinderReadings fewer = readings(cylinder).without(part);
            return alone(cylinder).chances(changed(cylinder, fewer, part, false));
        });
    }

    private CylinderAlone alone(int cylinder) {
        return posterior.alone(cylinder);
    }

    private CylinderLikelihood changed(int cylinder, CylinderReadings readings, Part part, boolean sure) {
        return posterior.joint().likelihoods().changed(posterior.joint().likelihood(cylinder), readings, part, sure);
    }

    /** The likeliest fault of a cylinder that is of another family than the candidate, {@code SOUND} left out. */
    public Optional<Candidate> bestRival(int cylinder, Candidate candidate) {
        return posterior.candidates(cylinder).entrySet().stream()
                .filter(entry -> entry.getKey().fault() != Fault.SOUND)
                .filter(entry -> entry.getKey().fault() != Fault.OTHER)
                .filter(entry ->
                        entry.getKey().fault().family() != candidate.fault().family())
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey);
    }

    /** Readings of a cylinder that are more likely a blunder than not, by chance of a blunder. */
    public Map<Part, Double> doubtful(int cylinder) {
        Map<Part, Double> doubtful = new EnumMap<>(Part.class);
        for (Part part : readings(cylinder).parts()) {
            if (part.mayBeABlunder() && mayBeDoubtful(cylinder, part)) {
                double blunder = blunder(cylinder, part);
                if (blunder >= posterior.constants().verdicts().doubtful()) {
                    doubtful.put(part, blunder);
                }
            }
        }
        return doubtful;
    }

    /** What the likeliest candidate keeps alone bounds the chance of a blunder; mostly it settles it, and is cheap. */
    private boolean mayBeDoubtful(int cylinder, Part part) {
        Candidate likeliest = posterior.candidates(cylinder).entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElseThrow();
        double kept = alone(cylinder).chance(likeliest, changed(cylinder, readings(cylinder), part, true));
        return 1 - kept >= posterior.constants().verdicts().doubtful();
    }

    /** 1 − Σ p′/Σ p with the flat part of that reading left out. */
    double blunder(int cylinder, Part part) {
        Map<Candidate, Double> sure = alone(cylinder).chances(changed(cylinder, readings(cylinder), part, true));
        return 1 - sum(sure) / sum(posterior.candidates(cylinder));
    }

    private static double sum(Map<Candidate, Double> chances) {
        return chances.values().stream().mapToDouble(p -> p).sum();
    }

    /** The reading whose removal makes {@code OTHER} least likely: the one to repeat where readings do not fit together. */
    public Optional<Part> misfit(int cylinder) {
        Set<Part> parts = readings(cylinder).parts();
        List<Part> repeatable = new ArrayList<>(parts);
        repeatable.removeIf(part -> !part.mayBeABlunder());
        return repeatable.stream().min((a, b) -> Double.compare(otherWithout(cylinder, a), otherWithout(cylinder, b)));
    }

    private double otherWithout(int cylinder, Part part) {
        Map<Candidate, Double> chances = without(cylinder, part);
        return chances.getOrDefault(Candidate.of(Fault.OTHER), 0.0) / sum(chances);
    }
}
