package org.pullproof.worth;

import java.util.Optional;
import java.util.Set;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.FuelSystem;
import org.pullproof.engine.Ignition;
import org.pullproof.units.Money;
import org.pullproof.worth.Option.Gain;

/**
 * One of the program's own options, with the engines it makes sense for. All figures are judgement: common practice, no source.
 *
 * @param name what
 * @param low cost undercut once in ten times
 * @param likely cost in the middle
 * @param high cost overrun once in ten times
 * @param hours own hours
 * @param expected what it is expected to bring
 * @param ignition kinds of ignition it makes sense for; empty for all
 * @param fuel kinds of fuel system it makes sense for; empty for all
 * @param onlyWithFault whether it makes sense only with a cylinder that is low or in doubt
 */
public record DefaultOption(
        String name,
        Money low,
        Money likely,
        Money high,
        double hours,
        Expected expected,
        Set<Ignition> ignition,
        Set<FuelSystem> fuel,
        boolean onlyWithFault) {
    public DefaultOption {
        ignition = Set.copyOf(ignition);
        fuel = Set.copyOf(fuel);
    }

    /** What an option is expected to bring, in percent of band power. */
    public sealed interface Expected {
        Gain gain(int cylinders);

        /** Quantile of the standard normal distribution at 0.95: half of a 90 % range in standard deviations. */
        double HALF_OF_90_PERCENT = 1.6449;

        private static Gain normal(double mean, double sd) {
            return new Gain(mean - HALF_OF_90_PERCENT * sd, mean, mean + HALF_OF_90_PERCENT * sd);
        }

        /** A normal gain with this mean and standard deviation, percent. */
        record Normal(double mean, double sd) implements Expected {
            @Override
            public Gain gain(int cylinders) {
                return normal(mean, sd);
            }
        }

        /**
         * One cylinder given back: the share falls with the number of cylinders, mean {@code ofFour · 4/n}, standard deviation
         * 5 with four cylinders or fewer, 4 with more (worth.md 1).
         *
         * @param ofFour percent of band power on a four-cylinder engine
         */
        record CylinderBack(double ofFour) implements Expected {
            @Override
            public Gain gain(int cylinders) {
                return normal(ofFour * 4 / cylinders, cylinders <= 4 ? 5 : 4);
            }
        }
    }

    boolean fits(EngineProfile profile, boolean fault) {
        return (ignition.isEmpty() || ignition.contains(profile.ignition()))
                && (fuel.isEmpty() || fuel.contains(profile.fuel()))
                && (fault || !onlyWithFault);
    }

    Option on(EngineProfile profile) {
        return new Option(name, low, likely, high, hours, Optional.of(expected.gain(profile.cylinders())), true);
    }
}
