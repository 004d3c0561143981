package org.pullproof.worth;

import java.util.OptionalDouble;
import org.pullproof.changes.Call;
import org.pullproof.changes.JudgedChange;
import org.pullproof.units.Figures;
import org.pullproof.units.Money;
import org.pullproof.units.Power;
import org.pullproof.worth.WorthFindings.CostPerHp;
import org.pullproof.worth.WorthFindings.Range;

/**
 * Money for one horsepower: cost divided by gain, from the high end of the gain to its low end. It is established only where
 * the whole interval of the gain lies above 0; a division by an interval that holds 0 has no meaning. Own derivation.
 */
final class PriceOfPower {
    private PriceOfPower() {}

    /** Of a change that was paid for and judged: its cost over the 90 % interval of its difference. */
    static CostPerHp of(JudgedChange change, Money cost) {
        if (change.call() == Call.SPOILED) {
            return notEstablished("the pulls were not made under comparable conditions");
        }
        return of(
                new Range(cost.value(), cost.value(), cost.value()),
                new Range(hp(change.lowKw()), hp(change.differenceKw()), hp(change.highKw())),
                cost.currency());
    }

    /**
     * @param money low, likely, high cost
     * @param gainHp low, likely, high gain, hp
     */
    static CostPerHp of(Range money, Range gainHp, String currency) {
        if (gainHp.high() <= 0) {
            return notEstablished("it lost power");
        }
        if (gainHp.low() <= 0) {
            return notEstablished("the interval holds 0");
        }
        double low = money.low() / gainHp.high();
        double likely = money.likely() / gainHp.likely();
        double high = money.high() / gainHp.low();
        return new CostPerHp(
                OptionalDouble.of(low),
                OptionalDouble.of(likely),
                OptionalDouble.of(high),
                words(low, likely, high, currency));
    }

    static CostPerHp notEstablished(String why) {
        return new CostPerHp(
                OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), "not established: " + why);
    }

    private static String words(double low, double likely, double high, String currency) {
        if (high <= 0) {
            return "it cost nothing";
        }
        return Figures.money(likely, currency) + " per hp (" + Figures.money(low, currency) + " to "
                + Figures.money(high, currency) + ")";
    }

    static double hp(double kilowatt) {
        return Power.ofKilowatt(kilowatt).horsepower();
    }
}
