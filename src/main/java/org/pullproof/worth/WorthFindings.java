package org.pullproof.worth;

import java.util.List;
import java.util.OptionalDouble;
import org.pullproof.units.Money;
import org.pullproof.units.Sentence;
import org.pullproof.worth.decision.words.DecisionWords;

/**
 * What is said of money: what is spent, what one horsepower cost where that is established, and the weighing of what could be next.
 *
 * @param currency of all figures here
 * @param spent money spent, which does not count
 * @param done every judged change with its cost for one horsepower
 * @param remarks what could not be counted, one sentence each
 * @param tooEarly whether nothing was read and no money told, so that there is nothing to weigh yet
 * @param weighing of the options, worked out when asked
 */
public record WorthFindings(
        String currency, Money spent, List<Paid> done, List<String> remarks, boolean tooEarly, Weighing weighing) {
    private static final Sentence EARLY = new Sentence(
            "**Too early to say.** Read the engine first, or say what the car would be worth if its engine were sound.");

    public WorthFindings {
        remarks = List.copyOf(remarks);
        done = List.copyOf(done);
    }

    /** The answer in words; weighs the options if that was not done yet. */
    public Sentence sentence() {
        return tooEarly ? EARLY : new DecisionWords(weighing.answer()).paragraph();
    }

    /**
     * One change that was paid for and judged.
     *
     * @param change its name
     * @param cost what it cost
     * @param costPerHp cost of one horsepower, or why it is not established
     */
    public record Paid(String change, Money cost, CostPerHp costPerHp) {}

    /**
     * Money for one horsepower.
     *
     * @param low lower end, money an hp; absent if not established
     * @param likely middle
     * @param high upper end
     * @param words "$29 per hp ($20 to $52)" or "not established: the interval holds 0"
     */
    public record CostPerHp(OptionalDouble low, OptionalDouble likely, OptionalDouble high, String words) {
        public boolean established() {
            return likely.isPresent();
        }
    }

    /** Three figures from low to high. */
    public record Range(double low, double likely, double high) {}
}
