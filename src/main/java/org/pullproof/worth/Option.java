package org.pullproof.worth;

import java.util.Optional;
import org.pullproof.units.Money;
import org.pullproof.worth.decision.problem.Normal;

/**
 * Something the owner could spend money on next, as entered.
 *
 * @param name what: "one head, valve job"
 * @param low cost that is undercut once in ten times
 * @param likely cost in the middle
 * @param high cost that is overrun once in ten times
 * @param hours own hours
 * @param gain expected gain of band power, percent; absent if none is expected to be known
 * @param judgement whether the figures are the program's defaults, not the owner's
 */
public record Option(
        String name, Money low, Money likely, Money high, double hours, Optional<Gain> gain, boolean judgement) {
    public Option {
        if (!(low.value() <= likely.value() && likely.value() <= high.value())) {
            throw new IllegalArgumentException(
                    name + ": costs go from low to high, were " + low + ", " + likely + ", " + high);
        }
        if (!low.currency().equals(likely.currency()) || !likely.currency().equals(high.currency())) {
            throw new IllegalArgumentException(name + ": all three costs are in one currency");
        }
        if (!(hours >= 0)) {
            throw new IllegalArgumentException(name + ": hours are not negative, were " + hours);
        }
    }

    /**
     * An expected gain.
     *
     * @param lowPercent lower end of its 90 % range, percent
     * @param likelyPercent its middle, percent
     * @param highPercent upper end, percent
     */
    public record Gain(double lowPercent, double likelyPercent, double highPercent) {
        public Gain {
            if (!(lowPercent <= likelyPercent && likelyPercent <= highPercent)) {
                throw new IllegalArgumentException(
                        "A gain goes from low to high, was " + lowPercent + ", " + likelyPercent + ", " + highPercent);
            }
        }

        /** Quantile of the standard normal distribution at 0.95: half of a 90 % range in standard deviations. */
        private static final double HALF_OF_90_PERCENT = 1.6449;

        /** As a normal distribution about its middle with the width of its range. */
        public Normal normal() {
            return new Normal(likelyPercent, (highPercent - lowPercent) / (2 * HALF_OF_90_PERCENT));
        }
    }
}
