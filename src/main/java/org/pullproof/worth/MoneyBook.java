package org.pullproof.worth;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The money of a session.
 *
 * @param spent what is spent already
 * @param options what could be spent next, as entered or edited; the program's own come from the catalogue
 * @param judgements numbers that the owner has put in the place of the program's, by key; see {@link
 *     org.pullproof.worth.trade.Judgement}
 */
public record MoneyBook(List<Spending> spent, List<Option> options, Map<String, Double> judgements) {
    public MoneyBook {
        spent = List.copyOf(spent);
        options = List.copyOf(options);
        judgements = Collections.unmodifiableMap(new TreeMap<>(judgements));
    }

    public MoneyBook(List<Spending> spent, List<Option> options) {
        this(spent, options, Map.of());
    }

    public static MoneyBook empty() {
        return new MoneyBook(List.of(), List.of());
    }

    /** The same with another list of spendings. */
    public MoneyBook withSpent(List<Spending> next) {
        return new MoneyBook(next, options, judgements);
    }

    /** The same with other options. */
    public MoneyBook withOptions(List<Option> next) {
        return new MoneyBook(spent, next, judgements);
    }

    /** The same with other own numbers. */
    public MoneyBook withJudgements(Map<String, Double> next) {
        return new MoneyBook(spent, options, next);
    }
}
