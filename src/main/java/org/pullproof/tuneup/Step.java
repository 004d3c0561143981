package org.pullproof.tuneup;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.pullproof.car.Access;
import org.pullproof.units.Money;

/**
 * One step of a tune-up.
 *
 * @param id short name in its graph: "h"
 * @param title what to do
 * @param needs steps that come first
 * @param after steps that come first where they are done too, because what they need off is off anyway
 * @param takesOff parts this step takes off the car
 * @param putsBack parts taken off by earlier steps that this step fits again
 * @param backBeforeStart parts of those it takes off that must be back, and checks of its own work that must be confirmed,
 *     before the engine starts
 * @param minutes typical time, minutes
 * @param parts what parts for it cost about; judgement
 * @param cautions sentences that stand at the act
 * @param heat whether it is done warm, or lets the engine cool
 * @param kind ordinary work, the start gate, or something done with the engine running
 * @param outfit tools, torques, what it uses up, and what it leaves behind
 */
public record Step(
        String id,
        String title,
        List<String> needs,
        List<String> after,
        List<String> takesOff,
        List<String> putsBack,
        List<String> backBeforeStart,
        int minutes,
        Money parts,
        List<String> cautions,
        Heat heat,
        Kind kind,
        Outfit outfit) {
    public Step {
        needs = List.copyOf(needs);
        after = List.copyOf(after);
        takesOff = List.copyOf(takesOff);
        putsBack = List.copyOf(putsBack);
        backBeforeStart = List.copyOf(backBeforeStart);
        cautions = List.copyOf(cautions);
        if (id.isBlank() || title.isBlank() || minutes < 1) {
            throw new IllegalArgumentException("A step has an id, a title and at least one minute: " + id);
        }
        if (!takesOff.containsAll(outfit.eachCylinder())) {
            throw new IllegalArgumentException("Step " + id + " takes off " + takesOff
                    + "; what every cylinder has one of must be among it: " + outfit.eachCylinder());
        }
    }

    /** When in the tune-up a step belongs. */
    public enum Kind {
        WORK,
        START_GATE,
        RUNNING
    }

    /** What a step asks of the engine's warmth. */
    public enum Heat {
        /** It does not matter, or the engine is cold by then. */
        ANY,
        /** Done while the engine is warm. */
        WARM,
        /** Waits until the engine has cooled. */
        COOLS
    }

    /** The same step in a plan that holds only some of the others. */
    Step within(Set<String> plan) {
        List<String> first = Stream.concat(needs.stream(), after.stream())
                .filter(plan::contains)
                .distinct()
                .toList();
        return new Step(
                id,
                title,
                first,
                List.of(),
                takesOff,
                putsBack,
                backBeforeStart,
                minutes,
                parts,
                cautions,
                heat,
                kind,
                outfit);
    }

    /** What the owner must permit: plugs out for anything that takes parts off, else start it. */
    public Access access() {
        return kind == Kind.RUNNING || takesOff.isEmpty() ? Access.START_IT : Access.PLUGS_OUT;
    }

    /** Whether this part or check has to be back, or confirmed, before the engine starts. */
    boolean blocksStart(String part) {
        return backBeforeStart.contains(part);
    }
}
