package org.pullproof.tuneup;

import java.util.List;
import java.util.stream.Stream;

/** The names of parts and checks that a tune-up knows: those of its steps, and those the owner added. */
record PartNames(StepGraph whole, Bench bench) {
    /**
     * @throws IllegalArgumentException naming the parts there are, if it knows no such part
     */
    String require(String part) {
        List<String> known = all();
        if (!known.contains(part)) {
            throw new IllegalArgumentException(
                    "\"" + part + "\" is no part of this tune-up; its parts are " + String.join(", ", known) + ".");
        }
        return part;
    }

    boolean ofSteps(String part) {
        return whole.steps().stream().flatMap(PartNames::touched).anyMatch(part::equals);
    }

    private List<String> all() {
        return Stream.concat(whole.steps().stream().flatMap(PartNames::touched), bench.addedNames())
                .distinct()
                .toList();
    }

    /** Parts a step takes off and checks of its own. */
    static Stream<String> touched(Step step) {
        return Stream.concat(step.takesOff().stream(), step.backBeforeStart().stream())
                .distinct();
    }

    /** Whether every cylinder has one of a part. */
    boolean eachCylinder(String part) {
        return whole.steps().stream()
                .anyMatch(step -> step.outfit().eachCylinder().contains(part));
    }
}
