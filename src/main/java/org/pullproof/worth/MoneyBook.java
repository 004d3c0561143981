package org.pullproof.worth;

import java.util.List;

/**
 * The money of a session.
 *
 * @param spent what is spent already
 * @param options what could be spent next, as entered or edited; the program's own come from the defaults
 */
public record MoneyBook(List<Spending> spent, List<Option> options) {
    public MoneyBook {
        spent = List.copyOf(spent);
        options = List.copyOf(options);
    }

    public static MoneyBook empty() {
        return new MoneyBook(List.of(), List.of());
    }
}
