package org.pullproof.worth;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pullproof.units.Money;
import org.pullproof.units.Sentence;

/**
 * What more money would buy, as far as it can be said without weighing chances.
 *
 * @param answer the answer in one sentence
 * @param currency of all figures here
 * @param spent money spent, which does not count
 * @param budgetLeft budget less what was spent since it was set, if a budget was told
 * @param options every option with what it costs and brings, cheapest first
 * @param done every judged change with its cost for one horsepower
 * @param remarks what could not be counted, one sentence each
 */
public record WorthFindings(
        Sentence answer,
        String currency,
        Money spent,
        Optional<Money> budgetLeft,
        List<Row> options,
        List<Paid> done,
        List<String> remarks) {
    public WorthFindings {
        remarks = List.copyOf(remarks);
        options = List.copyOf(options);
        done = List.copyOf(done);
    }

    /**
     * One option.
     *
     * @param option as entered
     * @param gainHp expected gain at the wheels, hp: low, likely, high; absent without power or gain
     * @param costPerHp cost of one horsepower, or why it is not established
     * @param overBudget whether even the low cost is over the budget left
     */
    public record Row(Option option, Optional<Range> gainHp, CostPerHp costPerHp, boolean overBudget) {}

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
