package org.pullproof.dyno;

import java.util.Optional;
import java.util.regex.Pattern;
import org.pullproof.units.Dimension;
import org.pullproof.units.Unit;

/** Words by which loggers name what they measure besides speed and power (C, common practice without a source). */
final class HeaderWords {
    private static final Pattern TIME = Pattern.compile("t|time.*|elapsed.*|.* time|timestamp|zeit");
    private static final Pattern ROLL = Pattern.compile(".*\\b(roll|roller|drum)\\b.*|omega");
    private static final Pattern SURFACE = Pattern.compile("(vehicle |road |wheel )?speed|v");
    private static final Pattern PULL = Pattern.compile("(pull|run)( ?(no\\.?|number|nr|id|#))?");
    private static final Pattern THROTTLE = Pattern.compile(".*throttle.*|tps\\b.*|pedal.*");
    private static final Pattern LAMBDA = Pattern.compile(".*(lambda|λ|\\bafr\\b|air[ /-]?fuel).*");
    private static final Pattern KNOCK = Pattern.compile(".*knock.*");
    private static final Pattern BOOST = Pattern.compile(".*(boost|\\bmap\\b|manifold).*");
    private static final Pattern VOLTS = Pattern.compile("v|volts?|.*\\bbatt.*|.*(supply|system) volt.*");
    private static final Pattern COOLANT = Pattern.compile(".*(coolant|water).*|ect|clt");
    private static final Pattern OIL = Pattern.compile(".*\\boil\\b.*");
    private static final Pattern INTAKE = Pattern.compile(".*(intake|charge|inlet).*|iat|act|air temp.*");
    private static final Pattern FUEL = Pattern.compile(".*\\bfuel\\b.*");

    private HeaderWords() {}

    /** Whether a header of that name and unit may be that channel; the unit, if there is one, is of a kind that the role takes. */
    static boolean suit(Role role, String name, Optional<Unit> unit) {
        return switch (role) {
            case TIME -> TIME.matcher(name).matches();
            case ROLL -> ROLL.matcher(name).matches() || onSurface(name, unit);
            case PULL -> PULL.matcher(name).matches();
            case THROTTLE -> THROTTLE.matcher(name).matches();
            case LAMBDA -> unit.isPresent() || LAMBDA.matcher(name).matches();
            case KNOCK -> KNOCK.matcher(name).matches();
            case BOOST -> BOOST.matcher(name).matches();
            case VOLTS -> VOLTS.matcher(name).matches();
            case COOLANT -> COOLANT.matcher(name).matches() && temperature(name, unit);
            case OIL -> OIL.matcher(name).matches() && temperature(name, unit);
            case INTAKE -> INTAKE.matcher(name).matches() && temperature(name, unit);
            case FUEL_PRESSURE -> FUEL.matcher(name).matches() && (unit.isPresent() || name.contains("press"));
            default -> false;
        };
    }

    private static boolean onSurface(String name, Optional<Unit> unit) {
        return SURFACE.matcher(name).matches()
                && unit.filter(told -> told.dimension() == Dimension.SPEED).isPresent();
    }

    /** Coolant, oil and intake have pressures too. */
    private static boolean temperature(String name, Optional<Unit> unit) {
        return unit.isPresent() || !name.contains("press");
    }
}
