package org.pullproof.health;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.pullproof.units.BadQuantityException;
import org.pullproof.units.Dimension;
import org.pullproof.units.Quantity;

/** The cells of one row, read with their problems: an unreadable cell is absent and leaves a problem behind. */
final class SheetRow {
    private final int line;
    private final Map<SheetColumn, String> cells;
    private final List<ReadingSheet.Problem> problems = new ArrayList<>();

    SheetRow(int line, Map<SheetColumn, String> cells) {
        this.line = line;
        this.cells = cells;
    }

    /**
     * What a figure may be.
     *
     * @param dimension of its unit
     * @param from least, SI
     * @param to greatest, SI
     * @param words both, for people: "0 to 5000 kPa"
     */
    record Range(Dimension dimension, double from, double to, String words) {}

    List<ReadingSheet.Problem> problems() {
        return problems;
    }

    void problem(SheetColumn column, String message) {
        problems.add(new ReadingSheet.Problem(line, column.key(), message));
    }

    boolean has(SheetColumn column) {
        return !text(column).isEmpty();
    }

    String text(SheetColumn column) {
        return cells.getOrDefault(column, "");
    }

    Optional<Quantity> quantity(SheetColumn column, Range range) {
        if (!has(column)) {
            return Optional.empty();
        }
        try {
            Quantity quantity = Quantity.parse(text(column), range.dimension());
            if (quantity.si() < range.from() || quantity.si() > range.to()) {
                problem(column, "\"" + text(column) + "\" is out of range: here it is " + range.words() + ".");
                return Optional.empty();
            }
            return Optional.of(quantity);
        } catch (BadQuantityException bad) {
            problem(column, String.valueOf(bad.getMessage()));
            return Optional.empty();
        }
    }

    OptionalInt whole(SheetColumn column, int from, int to) {
        if (!has(column)) {
            return OptionalInt.empty();
        }
        String text = text(column);
        if (text.matches("\\d{1,4}") && Integer.parseInt(text) >= from && Integer.parseInt(text) <= to) {
            return OptionalInt.of(Integer.parseInt(text));
        }
        problem(column, "\"" + text + "\" is not a whole number from " + from + " to " + to + ".");
        return OptionalInt.empty();
    }

    /** One of some words; an unknown one lists them. */
    Optional<String> word(SheetColumn column, List<String> words) {
        if (!has(column)) {
            return Optional.empty();
        }
        if (words.contains(text(column))) {
            return Optional.of(text(column));
        }
        problem(column, "\"" + text(column) + "\" is not known; write one of " + String.join(", ", words) + ".");
        return Optional.empty();
    }

    /** Refuses what stands in a column that says nothing of this test. */
    void refuse(SheetColumn column, TestKind test) {
        if (has(column)) {
            problem(column, "A reading of " + test.key() + " has no such column; leave the cell empty.");
        }
    }
}
