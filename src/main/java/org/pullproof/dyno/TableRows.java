package org.pullproof.dyno;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * The rows of a table, gone through from the first as often as asked; they need never all be held.
 *
 * @param <X> what may go wrong on the way
 */
@FunctionalInterface
public interface TableRows<X extends Exception> {
    /**
     * Hands over the rows in order.
     *
     * @param taker takes a row and says whether it wants another
     */
    void each(Predicate<TableRow> taker) throws X;

    /** The first rows. */
    default List<TableRow> head(int most) throws X {
        List<TableRow> head = new ArrayList<>();
        each(row -> {
            head.add(row);
            return head.size() < most;
        });
        return head;
    }

    /** Rows that are held already. */
    static TableRows<RuntimeException> of(List<TableRow> rows) {
        return taker -> {
            for (TableRow row : rows) {
                if (!taker.test(row)) {
                    return;
                }
            }
        };
    }
}
