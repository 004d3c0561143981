package org.pullproof.worth.decision.problem;

import java.util.Optional;
import java.util.Set;

/**
 * One line of the bill of an act. The same name is the same draw in every option.
 *
 * @param name what is paid for
 * @param kind whether it is engine work, other money, or the price of the car
 * @param quote its money before it overruns; of no account for the price, which the owner says
 * @param overrun how its money overruns
 * @param hours own hours before they overrun
 * @param weeks weeks without the car, as given
 * @param find a hidden find; absent if the line always comes
 * @param when the line comes only in states with all these faults
 */
public record CostLine(
        String name,
        Kind kind,
        Quote quote,
        Overrun overrun,
        double hours,
        double weeks,
        Optional<Find> find,
        Set<String> when) {

    /** What a line is for. */
    public enum Kind {
        /** Counts at the resale share. */
        ENGINE,
        /** No engine work, so no buyer pays for it: a dyno hour, the trouble of buying. */
        OTHER,
        /** The price of the car; the owner says how much. */
        PRICE
    }

    /**
     * A find that nobody looks for. One yes or no by its name, the same for all options that meet it.
     *
     * @param name of the find
     * @param chance 0 to 1
     */
    public record Find(String name, double chance) {
        public Find {
            Check.named("A find", name);
            Check.chance("The chance of " + name, chance);
        }
    }

    public CostLine {
        Check.named("A cost line", name);
        Check.notNegative("The hours of " + name, hours);
        Check.notNegative("The weeks of " + name, weeks);
        when = Set.copyOf(when);
    }

    /** Engine work. */
    public static CostLine work(String name, Quote quote, Overrun overrun) {
        return new CostLine(name, Kind.ENGINE, quote, overrun, 0, 0, Optional.empty(), Set.of());
    }

    /** Money that is no engine work. */
    public static CostLine other(String name, Quote quote) {
        return new CostLine(name, Kind.OTHER, quote, Overrun.NONE, 0, 0, Optional.empty(), Set.of());
    }

    /** The price of the car. */
    public static CostLine purchase() {
        return new CostLine("price", Kind.PRICE, Quote.fixed(0), Overrun.NONE, 0, 0, Optional.empty(), Set.of());
    }

    public CostLine taking(double ownHours, double weeksWithout) {
        return new CostLine(name, kind, quote, overrun, ownHours, weeksWithout, find, when);
    }

    public CostLine ifFound(String what, double chance) {
        return new CostLine(name, kind, quote, overrun, hours, weeks, Optional.of(new Find(what, chance)), when);
    }

    public CostLine onlyWith(Set<String> faults) {
        return new CostLine(name, kind, quote, overrun, hours, weeks, find, faults);
    }
}
