package org.pullproof.drawing;

import java.util.List;
import java.util.Optional;
import org.pullproof.dyno.Role;

/**
 * How much of the curves a chart shows.
 *
 * @param zoom the speeds shown; empty shows all that any pull covers
 * @param further what is shown below torque besides the difference, where it was logged
 * @param head lines written above the panels: of an exported picture, so that it can stand alone
 */
public record ChartLook(Optional<Speeds> zoom, List<Role> further, List<String> head) {
    public ChartLook {
        further = List.copyOf(further);
        head = List.copyOf(head);
    }

    /** Every speed, nothing but power, torque and difference. */
    public static ChartLook whole() {
        return new ChartLook(Optional.empty(), List.of(), List.of());
    }

    public ChartLook withHead(List<String> lines) {
        return new ChartLook(zoom, further, lines);
    }
}
