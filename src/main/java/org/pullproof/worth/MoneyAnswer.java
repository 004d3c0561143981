package org.pullproof.worth;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.pullproof.units.Figures;
import org.pullproof.units.Money;
import org.pullproof.units.Sentence;
import org.pullproof.worth.WorthFindings.Paid;

/** Words the answer of the sheet Worth it, as far as anything can be said without weighing chances. */
record MoneyAnswer(List<Paid> done, Money spent, Optional<Money> left, boolean powerKnown, boolean beforePurchase) {
    Sentence sentence() {
        return new Sentence(price() + " " + rest());
    }

    private String price() {
        Optional<Paid> free = established(paid -> paid.cost().value() <= 0).findFirst();
        Optional<Paid> cheapest = established(paid -> paid.cost().value() > 0)
                .min(Comparator.comparingDouble(
                        paid -> paid.costPerHp().likely().orElseThrow()));
        if (cheapest.isPresent()) {
            return "The power paid for at the best price so far is **"
                    + cheapest.get().change() + "**: "
                    + cheapest.get().costPerHp().words() + ".";
        }
        return free.map(paid ->
                        "**" + paid.change() + "** made power and cost nothing; nothing paid for has shown its price.")
                .orElseGet(this::noPrice);
    }

    private Stream<Paid> established(Predicate<Paid> which) {
        return done.stream().filter(paid -> paid.costPerHp().established()).filter(which);
    }

    private String noPrice() {
        if (beforePurchase) {
            return "**Nothing is bought yet**, and no adjustment has shown its price.";
        }
        return "**No adjustment has shown its price yet**: "
                + (done.isEmpty()
                        ? "none has both a cost and a call."
                        : "no change with a cost has a gain whose interval lies above 0.");
    }

    private String rest() {
        StringBuilder words = new StringBuilder("What the next money buys is listed, but chances are not weighed");
        words.append(powerKnown ? "." : ", and the present power is not known.");
        if (spent.value() > 0) {
            words.append(" The ").append(Figures.money(spent)).append(" already spent does not count.");
        }
        left.ifPresent(money -> words.append(' ').append(budget(money)));
        return words.toString();
    }

    private static String budget(Money left) {
        return left.value() >= 0
                ? "Of the budget, " + Figures.money(left) + " is left."
                : "The budget is overdrawn by " + Figures.money(-left.value(), left.currency()) + ".";
    }
}
