package org.pullproof.ui.worth;

import java.util.function.UnaryOperator;
import org.pullproof.ui.shell.Act;
import org.pullproof.worth.MoneyBook;

/** What the sheet Worth it does to the session. */
@FunctionalInterface
public interface MoneyActs {
    /**
     * Changes the money book.
     *
     * @param name of the edit, for undo: "Edit the costs of rings and bearings"
     */
    Act change(String name, UnaryOperator<MoneyBook> step);
}
