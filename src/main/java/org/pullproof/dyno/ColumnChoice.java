package org.pullproof.dyno;

import java.util.Optional;
import org.pullproof.units.Unit;

/**
 * Which column has a role, where a person said so.
 *
 * @param role what the column tells
 * @param header the column's header as it stands in the file
 * @param unit the unit of its figures; empty if the header tells it
 */
public record ColumnChoice(Role role, String header, Optional<Unit> unit) {
    public ColumnChoice {
        if (unit.isPresent() && !role.takes(unit.get().dimension())) {
            throw new IllegalArgumentException(
                    unit.get().symbol() + " is " + unit.get().dimension().words() + ", not "
                            + role.dimension().words());
        }
    }

    /**
     * Reads {@code power=Wheel power:kW}; the unit may be left out.
     *
     * @throws IllegalArgumentException with a sentence if it has another shape, or names no role or no unit
     */
    public static ColumnChoice parse(String text) {
        int equals = text.indexOf('=');
        if (equals < 1 || equals == text.length() - 1) {
            throw new IllegalArgumentException("\"" + text
                    + "\" names no column: write power=HEADER or power=HEADER:kW; a column is "
                    + Role.keys());
        }
        Role role = Role.of(text.substring(0, equals).strip());
        String rest = text.substring(equals + 1);
        int colon = rest.lastIndexOf(':');
        return colon < 1
                ? new ColumnChoice(role, rest.strip(), Optional.empty())
                : new ColumnChoice(
                        role, rest.substring(0, colon).strip(), Optional.of(unit(rest.substring(colon + 1))));
    }

    private static Unit unit(String name) {
        return Unit.named(name)
                .orElseThrow(() -> new IllegalArgumentException("\"" + name + "\" is not a unit known here"));
    }
}
