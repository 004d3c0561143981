package org.pullproof.dyno;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.pullproof.units.Figures;

/**
 * What else the log tells of the engine: knock, boost, its supply of current and fuel.
 *
 * @param limits what is borne
 */
record EngineRules(PullLimits limits) implements PullRule {
    private static final char SPACE = Figures.NO_BREAK_SPACE;

    @Override
    public Stream<String> flags(Judged pull, Company company) {
        return Stream.of(knock(pull), boost(pull, company), volts(pull), fuel(pull))
                .flatMap(stream -> stream);
    }

    /** A counter that runs on is read from where the pull begins. */
    private Stream<String> knock(Judged pull) {
        double[] counts = pull.trace().recording().finite(Role.KNOCK);
        double most = Arrays.stream(counts).max().orElse(0);
        boolean runsOn = rises(counts) && counts[0] > 0;
        double events = runsOn ? most - counts[0] : most;
        return events > 0
                ? Stream.of("knock: the log shows knock, up to " + Figures.number(events, 0)
                        + "; a setting that knocks cannot be the best. Stop and find the cause before the next pull.")
                : Stream.empty();
    }

    private static boolean rises(double[] counts) {
        for (int i = 1; i < counts.length; i++) {
            if (counts[i] < counts[i - 1]) {
                return false;
            }
        }
        return counts.length > 0;
    }

    private Stream<String> boost(Judged pull, Company company) {
        OptionalDouble usual = company.usualOfSetup(pull, Figured.mean(Role.BOOST));
        double own = pull.mean(Role.BOOST);
        return usual.isPresent() && Math.abs(own - usual.getAsDouble()) > 1e3 * limits.boostKpa()
                ? Stream.of("boost: its mean in the band is " + kilopascal(own) + ", against "
                        + kilopascal(usual.getAsDouble()) + " as is usual for this setup; "
                        + kilopascal(1e3 * limits.boostKpa()) + " either way is borne.")
                : Stream.empty();
    }

    private static String kilopascal(double pascal) {
        return Figures.number(pascal / 1e3, 1) + SPACE + "kPa";
    }

    private Stream<String> volts(Judged pull) {
        OptionalDouble least = Arrays.stream(
                        Medians.of(pull.rows(), row -> pull.rows().at(Role.VOLTS, row)))
                .min();
        return least.isPresent() && least.getAsDouble() < limits.weakVolts()
                ? Stream.of("volts: the supply goes down to " + Figures.number(least.getAsDouble(), 1) + SPACE
                        + "V; spark and pump want " + Figures.number(limits.weakVolts(), 1) + SPACE + "V.")
                : Stream.empty();
    }

    private Stream<String> fuel(Judged pull) {
        double[] pressure = Medians.of(pull.rows(), row -> pull.rows().at(Role.FUEL_PRESSURE, row));
        if (pressure.length < 2 || pressure[0] <= 0) {
            return Stream.empty();
        }
        double fall = 100 * (1 - Arrays.stream(pressure).min().orElseThrow() / pressure[0]);
        return fall > limits.fuelFallPercent()
                ? Stream.of("volts: weak supply: fuel pressure falls by " + Figures.percent(fall, 0) + " in the pull; "
                        + Figures.percent(limits.fuelFallPercent(), 0) + " is borne.")
                : Stream.empty();
    }
}
