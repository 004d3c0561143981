package org.pullproof.changes;

import java.time.LocalDateTime;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.pullproof.units.Money;

/**
 * A step from one setup to another, as recorded. Going back is a change whose target is an earlier setup.
 *
 * @param from id of the setup it was made from
 * @param to id of the setup it led to
 * @param what what was done, in words
 * @param time when
 * @param cost what it cost, if known
 * @param rotating the rotating parts it touched, in their own order
 */
public record Change(
        String from, String to, String what, LocalDateTime time, Optional<Money> cost, Set<RotatingPart> rotating) {
    public Change {
        EnumSet<RotatingPart> ordered = EnumSet.noneOf(RotatingPart.class);
        ordered.addAll(rotating);
        rotating = Collections.unmodifiableSet(ordered);
    }

    /** This change with another cost, or with none known. */
    public Change withCost(Optional<Money> other) {
        return new Change(from, to, what, time, other, rotating);
    }

    /** This change in other words. */
    public Change withWhat(String other) {
        return new Change(from, to, other, time, cost, rotating);
    }
}
