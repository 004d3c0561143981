package org.pullproof.worth.decision.money;

import java.util.List;

/**
 * Where in an option a pick stands.
 *
 * @param path {@code /outcome} after a look, {@code >index} after a pick
 * @param seen outcomes on the way
 * @param choices what there is to pick from
 */
public record PickPlace(String path, List<String> seen, List<String> choices) {
    public PickPlace {
        seen = List.copyOf(seen);
        choices = List.copyOf(choices);
    }
}
