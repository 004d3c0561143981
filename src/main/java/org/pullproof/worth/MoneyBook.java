package org.pullproof.worth;

import java.util.List;

/**
 * The money of a session.
 *
 * @param spent what is spent already
 * @param options what could be spent next, as entered or edited; the program's own come from the catalogue
 */
public record MoneyBook(List<Spending> spent, List<Option> options) {
    public MoneyBook {
        spent = List.copyOf(spent);
        options = List.copyOf(options);
    }

    public static MoneyBook empty() {
        return new MoneyBook(List.of(), List.of());
    }

    /** The same with another list of spendings. */
    public MoneyBook withSpent(List<Spending> next) {
        return new MoneyBook(next, options);
    }

    /** The same with other options. */
    public MoneyBook withOptions(List<Option> next) {
        return new MoneyBook(spent, next);
    }
}
