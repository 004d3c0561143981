package org.pullproof.tuneup;

import java.util.List;
import java.util.Optional;

/**
 * What belongs to a step besides its place in the order.
 *
 * @param eachCylinder parts of those it takes off of which every cylinder has one, so they come back one by one
 * @param tools what lies ready
 * @param figures torques and gaps in words, with their unit; the maker's manual overrides them
 * @param buys what it uses up
 * @param work the word for what it changes on every cylinder ({@code plug}, {@code wire}), kept among the readings as work done
 * @param later what is looked at once more afterwards
 */
public record Outfit(
        List<String> eachCylinder,
        List<String> tools,
        List<String> figures,
        List<Consumable> buys,
        Optional<String> work,
        List<Recheck> later) {
    /** Nothing of all that. */
    public static final Outfit NONE =
            new Outfit(List.of(), List.of(), List.of(), List.of(), Optional.empty(), List.of());

    public Outfit {
        eachCylinder = List.copyOf(eachCylinder);
        tools = List.copyOf(tools);
        figures = List.copyOf(figures);
        buys = List.copyOf(buys);
        later = List.copyOf(later);
    }
}
