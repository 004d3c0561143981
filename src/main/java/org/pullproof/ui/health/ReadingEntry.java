package org.pullproof.ui.health;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.pullproof.engine.EngineProfile;
import org.pullproof.health.LeakZone;
import org.pullproof.health.TestKind;
import org.pullproof.health.TestOrder;
import org.pullproof.health.Words;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;
import org.pullproof.units.UnitSystem;

/**
 * What is being typed of a reading: test, cylinder and a text for each column. How a run is made (strokes, throttle, gauge)
 * stays from one cylinder to the next; what is read at the cylinder does not.
 */
public final class ReadingEntry {
    private final ObjectProperty<TestKind> test = new SimpleObjectProperty<>(TestKind.COMPRESSION_DRY);
    private final IntegerProperty cylinder = new SimpleIntegerProperty(1);
    private final Map<EntryColumn, String> texts = new EnumMap<>(EntryColumn.class);
    private final Supplier<EngineProfile> engine;
    private final Supplier<UnitSystem> units;

    ReadingEntry(Supplier<EngineProfile> engine, Supplier<UnitSystem> units) {
        this.engine = engine;
        this.units = units;
    }

    public ObjectProperty<TestKind> testProperty() {
        return test;
    }

    public IntegerProperty cylinderProperty() {
        return cylinder;
    }

    /** The unit that stands beside a column, or empty words. */
    public String unitWords(EntryColumn column) {
        return column.unit(test.get(), units.get()).map(Unit::symbol).orElse("");
    }

    /**
     * Reads one text as it will be recorded: a bare figure takes the unit beside it.
     *
     * @throws IllegalArgumentException with a sentence if it cannot be read
     */
    public String read(EntryColumn column, String typed) {
        String text = typed.strip();
        if (!column.choices().isEmpty()) {
            return text;
        }
        return switch (column) {
            case STROKES, ROUND -> count(column, text);
            case VALUE -> value(text);
            default ->
                column.unit(test.get(), units.get())
                        .map(unit -> Quantity.parse(text, unit).toString())
                        .orElse(text);
        };
    }

    private static String count(EntryColumn column, String text) {
        if (!text.matches("[1-9]\\d?")) {
            throw new IllegalArgumentException(
                    column.words() + " is a whole number from 1 to 99, was \"" + text + "\".");
        }
        return text;
    }

    private String value(String text) {
        List<String> words = Words.of(test.get());
        if (words.contains(text)
                || (test.get() == TestKind.LEAKDOWN && LeakZone.named(text).isPresent())) {
            return text;
        }
        boolean startsAsFigure = text.matches("[+\\-\u2212]?[.,]?\\d.*");
        if (!startsAsFigure && !words.isEmpty() && test.get() != TestKind.CODES) {
            throw new IllegalArgumentException("\"" + text + "\" is not an answer to "
                    + test.get().words() + ": write " + String.join(", ", words) + ".");
        }
        // a pressure behind the restrictor tells a leak as well as a percentage does
        boolean otherUnit = test.get() == TestKind.LEAKDOWN && text.matches(".*[A-Za-z].*");
        return EntryColumn.VALUE
                .unit(test.get(), units.get())
                .map(unit -> otherUnit ? text : Quantity.parse(text, unit).toString())
                .orElse(text);
    }

    /** Keeps the text of a column; empty means not recorded. */
    public void put(EntryColumn column, String text) {
        if (text.isBlank()) {
            texts.remove(column);
        } else {
            texts.put(column, text);
        }
    }

    public String text(EntryColumn column) {
        return texts.getOrDefault(column, "");
    }

    /** The row of a table of readings that says the same. */
    Map<String, String> cells() {
        Map<String, String> cells = new LinkedHashMap<>();
        cells.put("test", test.get().key());
        if (test.get().byCylinder()) {
            cells.put("cylinder", String.valueOf(cylinder.get()));
        }
        for (EntryColumn column : EntryColumn.of(test.get())) {
            if (!text(column).isEmpty()) {
                cells.put(column.key(), text(column));
            }
        }
        return cells;
    }

    /** The row of a reading that was not typed here but made in the same way. */
    Map<String, String> cellsWith(Map<String, String> read) {
        Map<String, String> cells = new LinkedHashMap<>(cells());
        for (EntryColumn column : EntryColumn.of(test.get())) {
            if (column.eachTime()) {
                cells.remove(column.key());
            }
        }
        cells.putAll(read);
        cells.computeIfPresent(EntryColumn.VALUE.key(), (key, text) -> read(EntryColumn.VALUE, text));
        return cells;
    }

    /** Forgets what was read at this cylinder and goes on to the next in the order of the test. */
    void next() {
        texts.keySet().removeIf(EntryColumn::eachTime);
        cylinder.set(TestOrder.of(test.get(), engine.get()).after(cylinder.get()));
    }
}
