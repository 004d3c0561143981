package org.pullproof.tuneup;

import java.time.LocalDateTime;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** Keeps the off-car shelf by the rules of one graph: adds what no step names, notes where things lie, refits one by one. Immutable. */
public final class Shelving {
    private final StepGraph whole;

    public Shelving(StepGraph whole) {
        this.whole = whole;
    }

    private PartNames names(TuneUp tuneUp) {
        return new PartNames(whole, tuneUp.bench());
    }

    /**
     * Puts something on the shelf that no step takes off.
     *
     * @throws IllegalArgumentException with a sentence if a step knows it, or it has no name
     */
    public TuneUp add(TuneUp tuneUp, String name, LocalDateTime when) {
        AddedPart part = new AddedPart(name, when);
        if (names(tuneUp).ofSteps(part.name())) {
            throw new IllegalArgumentException("\"" + part.name()
                    + "\" comes off with a step of this tune-up: tick that step, or write more of it.");
        }
        return tuneUp.withoutBack(part.name()).withBench(tuneUp.bench().withAdded(part));
    }

    /**
     * Notes where a part lies, or what belongs to it; an empty note forgets it.
     *
     * @throws IllegalArgumentException naming the parts there are, if it knows no such part
     */
    public TuneUp note(TuneUp tuneUp, String part, String words) {
        Bench bench = tuneUp.bench();
        return tuneUp.withBench(
                bench.withNote(bench.note(names(tuneUp).require(part)).withNote(words)));
    }

    /**
     * Notes that a part of which every cylinder has one is back on a cylinder; with the last one it is back whole.
     *
     * @param cylinders how many this engine has
     * @throws IllegalArgumentException with a sentence if it is no such part
     */
    public TuneUp fit(TuneUp tuneUp, String part, int cylinder, int cylinders) {
        requireEach(tuneUp, part);
        Set<Integer> fitted = new TreeSet<>(tuneUp.bench().note(part).fitted());
        fitted.add(cylinder);
        Set<Integer> all =
                new HashSet<>(IntStream.rangeClosed(1, cylinders).boxed().toList());
        return fitted.containsAll(all) ? tuneUp.withBack(part) : withFitted(tuneUp, part, fitted);
    }

    /**
     * Notes that such a part is off again on a cylinder.
     *
     * @throws IllegalArgumentException as {@link #fit} does
     */
    public TuneUp unfit(TuneUp tuneUp, String part, int cylinder) {
        requireEach(tuneUp, part);
        Set<Integer> fitted = new TreeSet<>(tuneUp.bench().note(part).fitted());
        fitted.remove(cylinder);
        return withFitted(tuneUp, part, fitted);
    }

    private void requireEach(TuneUp tuneUp, String part) {
        PartNames names = names(tuneUp);
        if (!names.eachCylinder(names.require(part))) {
            throw new IllegalArgumentException(part + ": there is not one for every cylinder; put it back whole.");
        }
    }

    private static TuneUp withFitted(TuneUp tuneUp, String part, Set<Integer> fitted) {
        Bench bench = tuneUp.bench();
        return tuneUp.withBench(bench.withNote(bench.note(part).withFitted(fitted)));
    }
}
