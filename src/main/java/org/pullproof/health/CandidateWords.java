package org.pullproof.health;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pullproof.health.faults.Candidate;
import org.pullproof.health.faults.Explainer;
import org.pullproof.health.faults.Fault;
import org.pullproof.health.faults.FaultConstants;
import org.pullproof.health.faults.Part;

/** Which readings fit a candidate and which speak against it, in words: beside a sound cylinder, and beside the best other fault. */
final class CandidateWords {
    private final Explainer explainer;
    private final PartWords parts;
    private final FaultConstants.Verdicts limits;

    /** Sentences for and against. */
    record Lists(List<String> fits, List<String> against) {}

    CandidateWords(Explainer explainer, PartWords parts, FaultConstants.Verdicts limits) {
        this.explainer = explainer;
        this.parts = parts;
        this.limits = limits;
    }

    Lists of(int cylinder, Candidate candidate) {
        List<String> fits = new ArrayList<>();
        List<String> against = new ArrayList<>();
        Optional<Candidate> rival = explainer.bestRival(cylinder, candidate);
        Map<Part, Double> besideSound = candidate.fault() == Fault.SOUND
                ? Map.of()
                : explainer.contributions(cylinder, candidate, Candidate.of(Fault.SOUND));
        Map<Part, Double> besideRival = rival.map(other -> explainer.contributions(cylinder, candidate, other))
                .orElse(Map.of());
        for (Part part : Part.values()) {
            double sound = besideSound.getOrDefault(part, 0.0);
            double other = besideRival.getOrDefault(part, 0.0);
            String reading = besideSound.containsKey(part) || besideRival.containsKey(part)
                    ? Phrase.capital(parts.of(cylinder, part))
                    : "";
            if (Math.max(sound, other) >= limits.fits()) {
                fits.add(reading + strongly(Math.max(sound, other)) + apart(sound, other, rival) + ".");
            }
            if (Math.min(sound, other) <= -limits.fits()) {
                against.add(reading + strongly(-Math.min(sound, other)) + ": " + better(sound, rival) + ".");
            }
        }
        return new Lists(fits, against);
    }

    private String strongly(double delta) {
        return delta >= limits.strongly() ? ", strongly" : "";
    }

    /** A reading that fits, yet does not part the candidate from its rival. */
    private String apart(double sound, double other, Optional<Candidate> rival) {
        boolean undecided = sound >= limits.fits() && Math.abs(other) < limits.fits();
        return rival.filter(there -> undecided)
                .map(there -> " (fits \"" + FaultWords.name(there) + "\" as well)")
                .orElse("");
    }

    private String better(double sound, Optional<Candidate> rival) {
        return sound <= -limits.fits()
                ? "a sound cylinder fits better"
                : rival.map(there -> "\"" + FaultWords.name(there) + "\" fits better")
                        .orElse("");
    }
}
