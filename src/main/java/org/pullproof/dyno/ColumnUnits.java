package org.pullproof.dyno;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import org.pullproof.units.Unit;

/**
 * The unit of a column: what a person said, else its header, else the one that its kind of figure has anyway.
 *
 * @param row the header row
 */
record ColumnUnits(HeaderRow row) {
    /**
     * @throws UnreadablePullException if it has none, or one of another kind
     */
    Unit needed(Role role, int column) throws UnreadablePullException {
        Optional<Unit> told = told(role, column);
        if (told.isPresent() && !role.takes(told.get().dimension())) {
            throw new UnreadablePullException(
                    row.line(),
                    "the column \"" + row.text(column) + "\" is in "
                            + told.get().symbol() + ", which is "
                            + told.get().dimension().words() + ", not "
                            + role.dimension().words() + ".");
        }
        Optional<Unit> unit = told.or(() -> usual(role, column));
        if (unit.isEmpty()) {
            throw new UnreadablePullException(row.line(), missing(role, column));
        }
        return unit.get();
    }

    /** The unit of a column that is not needed; empty if it is not clear. */
    Optional<Unit> maybe(Role role, int column) {
        return told(role, column).filter(unit -> role.takes(unit.dimension())).or(() -> usual(role, column));
    }

    private Optional<Unit> told(Role role, int column) {
        return row.choice(role).flatMap(ColumnChoice::unit).or(row.headers().get(column)::unit);
    }

    private Optional<Unit> usual(Role role, int column) {
        Header header = row.headers().get(column);
        boolean speedInAStrangeUnit = role == Role.RPM && header.strangeUnit().isPresent();
        if (!role.needsNoUnit() || speedInAStrangeUnit) {
            return Optional.empty();
        }
        return Optional.of(
                switch (role) {
                    case RPM -> Unit.RPM;
                    case VOLTS -> Unit.VOLT;
                    case LAMBDA -> header.name().matches(".*(afr|fuel).*") ? Unit.AFR : Unit.LAMBDA;
                    default -> Unit.ONE;
                });
    }

    /** Says that a column has no unit, or none known here, and how to tell it. */
    String missing(Role role, int column) {
        Header header = row.headers().get(column);
        String strange = header.strangeUnit().orElse("");
        String what = strange.isEmpty() ? " has no unit" : " has a unit not known here, " + strange;
        String units = Arrays.stream(Unit.values())
                .filter(unit -> role.takes(unit.dimension()))
                .map(Unit::symbol)
                .collect(Collectors.joining(", "));
        return "the column \"" + header.text() + "\"" + what + "; known are " + units + ". Say it with --column "
                + role.key() + "=" + header.name() + ":" + example(role) + ".";
    }

    private static String example(Role role) {
        return role == Role.TIME ? "s" : Unit.of(role.dimension()).get(0).symbol();
    }
}
