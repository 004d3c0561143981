package org.pullproof.worth.decision.money;

import java.util.List;

/**
 * Where in an option a pick stands.
 *
 * @param path {@code /outcome} after a look, {@code >index} after a pick
 * @param seen outcomes on the way
 * @param choices what there is to pick from
 * @param leaves leaves behind it
 */
public record PickPlace(String path, List<String> seen, List<String> choices, List<Integer> leaves) {
    public PickPlace {
        seen = List.copyOf(seen);
        choices = List.copyOf(choices);
        leaves = List.copyOf(leaves);
    }
}
