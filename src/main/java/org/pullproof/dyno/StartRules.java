package org.pullproof.dyno;

import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.pullproof.units.Figures;
import org.pullproof.units.Shown;

/**
 * Whether the pull began as warm as the others of its day.
 *
 * @param limits what is borne
 * @param figures to write temperatures with
 */
record StartRules(PullLimits limits, Figures figures) implements PullRule {
    @Override
    public Stream<String> flags(Judged pull, Company company) {
        return Stream.of(
                        off(pull, company, Role.COOLANT, limits.coolantC()),
                        off(pull, company, Role.OIL, limits.oilC()),
                        off(pull, company, Role.INTAKE, limits.intakeC()),
                        soaked(pull, company))
                .flatMap(stream -> stream);
    }

    private Stream<String> off(Judged pull, Company company, Role role, double borne) {
        OptionalDouble usual = company.usualOfDay(pull, Figured.first(role));
        double own = pull.first(role);
        if (usual.isEmpty() || Double.isNaN(own) || Math.abs(own - usual.getAsDouble()) <= borne) {
            return Stream.empty();
        }
        return Stream.of("start-window: " + role.words() + " at the start is " + temperature(own) + ", against "
                + temperature(usual.getAsDouble()) + " as is usual today; " + step(borne) + " either way is borne.");
    }

    /** Where the window against the usual has not told it already. */
    private Stream<String> soaked(Judged pull, Company company) {
        OptionalDouble first = company.firstOfDay(pull, Role.INTAKE);
        double own = pull.first(Role.INTAKE);
        if (first.isEmpty()
                || !(own > first.getAsDouble() + limits.soakedC())
                || off(pull, company, Role.INTAKE, limits.intakeC()).findAny().isPresent()) {
            return Stream.empty();
        }
        return Stream.of("start-window: soaked: " + Role.INTAKE.words() + " at the start is " + temperature(own)
                + ", against " + temperature(first.getAsDouble()) + " at the first pull; " + step(limits.soakedC())
                + " more is borne.");
    }

    private String temperature(double kelvin) {
        return figures.of(kelvin, Shown.AIR_TEMPERATURE);
    }

    private String step(double kelvin) {
        return figures.difference(kelvin, Shown.AIR_TEMPERATURE);
    }
}
