package org.pullproof.worth.decision.money;

import java.util.List;
import java.util.Set;

/**
 * Where in an option a pick stands.
 *
 * @param path {@code /outcome} after a look, {@code >index} after a pick
 * @param seen outcomes on the way
 * @param choices what there is to pick from
 * @param turnBacks choices that give the work up at once: sell, break, walk away
 * @param leaves leaves behind it
 */
public record PickPlace(
        String path, List<String> seen, List<String> choices, Set<Integer> turnBacks, List<Integer> leaves) {
    public PickPlace {
        seen = List.copyOf(seen);
        choices = List.copyOf(choices);
        turnBacks = Set.copyOf(turnBacks);
        leaves = List.copyOf(leaves);
    }
}
