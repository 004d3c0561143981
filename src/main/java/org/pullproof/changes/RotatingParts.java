package org.pullproof.changes;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.pullproof.dyno.PullFindings;
import org.pullproof.engine.Setup;

/**
 * Which setups share their rotating parts. A change that touched one begins a new state; what is made from it stays in that
 * state. Only setups of one state can be compared: in a pull the speed rises, so what is spun up takes power or spares it.
 */
final class RotatingParts {
    /** The state of a setup: the setups whose making touched a rotating part, on the way to it, and which parts. */
    private final Map<String, List<Change>> touched = new LinkedHashMap<>();

    RotatingParts(List<Setup> setups, List<Change> changes) {
        List<String> made = setups.stream().map(Setup::id).toList();
        for (String setup : made) {
            Optional<Change> step = Comparison.madeBy(setup, made, changes);
            List<Change> before =
                    step.map(by -> touched.getOrDefault(by.from(), List.of())).orElse(List.of());
            touched.put(
                    setup,
                    step.filter(by -> !by.rotating().isEmpty())
                            .map(by -> with(before, by))
                            .orElse(before));
        }
    }

    private static List<Change> with(List<Change> before, Change step) {
        return Stream.concat(before.stream(), Stream.of(step)).toList();
    }

    boolean same(String one, String other) {
        return of(one).equals(of(other));
    }

    private List<Change> of(String setup) {
        return touched.getOrDefault(setup, List.of());
    }

    /** The parts that two setups differ in: "flywheel and gear". */
    String between(String one, String other) {
        Set<RotatingPart> parts = new LinkedHashSet<>();
        of(one).stream().filter(step -> !of(other).contains(step)).forEach(step -> parts.addAll(step.rotating()));
        of(other).stream().filter(step -> !of(one).contains(step)).forEach(step -> parts.addAll(step.rotating()));
        return Wording.list(parts.stream().map(RotatingPart::key).toList());
    }

    /** The flag of a pull whose setup has other rotating parts than the first setup that was pulled. */
    Optional<String> flag(PullFindings pull, PullFindings first, String firstName) {
        String setup = pull.pull().setup();
        String base = first.pull().setup();
        return same(setup, base)
                ? Optional.empty()
                : Optional.of("rotating-parts: " + between(setup, base) + " changed since " + firstName
                        + "; while the speed rises that reads as power, so the two cannot be compared.");
    }
}
