package org.pullproof.health.faults;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.pullproof.health.AirPlace;
import org.pullproof.health.faults.Hypotheses.Path;

/**
 * How likely it is to hear the air of a leak-down test where it was heard, and nowhere else.
 *
 * <pre>  p = f + (most − f)/(1 + (q₅₀/q)^(1/steepness)),   q = least + flow to that place; f where none can go</pre>
 */
final class Heard {
    private static final Map<AirPlace, Path> WAYS = Map.of(
            AirPlace.EXHAUST, Path.EXHAUST,
            AirPlace.INTAKE, Path.INTAKE,
            AirPlace.NEIGHBOUR, Path.NEIGHBOUR,
            AirPlace.COOLANT, Path.COOLANT);

    /** One place besides the crankcase: what is known before any flow. */
    private record Ear(Path path, boolean heard, double falsely, double half, double others) {}

    /** Takes what one path adds. */
    @FunctionalInterface
    interface Sum {
        void add(Path path, double likelihood);
    }

    private final FaultConstants.Hearing hearing;
    private final boolean listened;
    private final boolean crankcaseHeard;
    private final double crankcaseFalsely;
    private final double crankcaseHalf;
    private final List<Ear> ears;
    private final double silence;

    Heard(Optional<Set<AirPlace>> air, FaultConstants.Hearing hearing) {
        Set<AirPlace> heard = air.orElse(Set.of());
        this.hearing = hearing;
        this.listened = air.isPresent();
        this.crankcaseHeard = heard.contains(AirPlace.CRANKCASE);
        this.crankcaseFalsely = hearing.falsely().getOrDefault(AirPlace.CRANKCASE, 0.0);
        this.crankcaseHalf = hearing.half().getOrDefault(AirPlace.CRANKCASE, 0.0);
        this.silence = Arrays.stream(AirPlace.values())
                .filter(WAYS::containsKey)
                .mapToDouble(place -> silent(place, heard))
                .reduce(1, (a, b) -> a * b);
        this.ears = Arrays.stream(AirPlace.values())
                .filter(WAYS::containsKey)
                .map(place -> ear(place, heard))
                .toList();
    }

    private Ear ear(AirPlace place, Set<AirPlace> heard) {
        return new Ear(
                WAYS.getOrDefault(place, Path.ANY),
                heard.contains(place),
                hearing.falsely().getOrDefault(place, 0.0),
                hearing.half().getOrDefault(place, 0.0),
                silence / silent(place, heard));
    }

    /** Likelihood of a place where no air goes. */
    private double silent(AirPlace place, Set<AirPlace> heard) {
        double falsely = hearing.falsely().getOrDefault(place, 0.0);
        return heard.contains(place) ? falsely : 1 - falsely;
    }

    /**
     * Adds the likelihood of every path, each times a factor.
     *
     * @param ringShare share of the air that goes past the rings where the hole leads elsewhere
     * @param grams flow through all of it, g/s
     */
    void add(double factor, double ringShare, double grams, Sum sum) {
        if (!listened) {
            sum.add(Path.CRANKCASE, factor);
            ears.forEach(ear -> sum.add(ear.path(), factor));
            return;
        }
        sum.add(Path.CRANKCASE, factor * silence * crankcase(grams));
        double beside = factor * crankcase(grams * ringShare);
        for (Ear ear : ears) {
            double chance = chance(ear.falsely(), ear.half(), grams * (1 - ringShare));
            sum.add(ear.path(), beside * ear.others() * (ear.heard() ? chance : 1 - chance));
        }
    }

    private double crankcase(double grams) {
        double chance = chance(crankcaseFalsely, crankcaseHalf, grams);
        return crankcaseHeard ? chance : 1 - chance;
    }

    private double chance(double falsely, double half, double grams) {
        double flow = hearing.least() + grams;
        return falsely + (hearing.most() - falsely) / (1 + Math.pow(half / flow, 1 / hearing.steepness()));
    }
}
