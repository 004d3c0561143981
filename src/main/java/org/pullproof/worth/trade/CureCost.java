package org.pullproof.worth.trade;

import java.util.OptionalDouble;
import org.pullproof.worth.decision.problem.Overrun;

/**
 * What the cheapest full cure of a fault costs a buyer (worth.md 1, judgement):
 *
 * <pre> P50 · overrun median + hours · price of an hour to a buyer,   with the works that have to go before it</pre>
 */
public final class CureCost {
    private final Catalogue catalogue;

    public CureCost(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** Absent if no work cures it for certain. */
    public OptionalDouble of(FaultRow fault) {
        return catalogue.works().values().stream()
                .filter(work -> cures(work, fault.key()))
                .mapToDouble(this::whole)
                .min();
    }

    /** What a buyer who knows takes off: nothing for what nobody knows of. */
    double discount(FaultRow fault) {
        return fault.hidden() ? 0 : of(fault).orElse(0);
    }

    private static boolean cures(Work work, String fault) {
        return work.otherEngine()
                || work.cures().contains(fault)
                || (fault.equals("head") && work.cures().contains("heads"));
    }

    private double whole(Work work) {
        return bill(work)
                + work.needs().stream()
                        .mapToDouble(key -> bill(catalogue.work(key)))
                        .sum();
    }

    private double bill(Work work) {
        double hours = catalogue
                .numbers()
                .find(work.number("hours"))
                .map(JudgedNumber::value)
                .orElse(0.0);
        return catalogue.number(work.number("p50")) * median(work.overrun())
                + hours * catalogue.number("discount.hour");
    }

    private double median(Overrun overrun) {
        return switch (overrun) {
            case REPAIR -> catalogue.number("overrun.repair.median");
            case REBUILD -> catalogue.number("overrun.rebuild.median");
            case NONE -> 1;
        };
    }
}
