package org.pullproof.ui.health;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Readings copied from a spreadsheet, cells parted by tabs. A table with a column {@code test} is read by the names of its columns,
 * as {@code add-readings} reads it; two columns are cylinder and reading; one column is read at the chosen cylinder and those
 * after it.
 */
final class PastedReadings {
    private static final String CYLINDER = "cylinder";
    private static final String VALUE = "value";

    private final List<List<String>> rows;

    private PastedReadings(List<List<String>> rows) {
        this.rows = rows;
    }

    /** Whether a text is more than one entry. */
    static boolean isTable(String text) {
        return text.strip().contains("\t") || text.strip().contains("\n");
    }

    static PastedReadings of(String text) {
        return new PastedReadings(text.strip()
                .lines()
                .filter(line -> !line.isBlank())
                .map(line ->
                        Arrays.stream(line.split("\t", -1)).map(String::strip).toList())
                .toList());
    }

    /** Whether its first row names columns, the test among them: then each row stands by itself. */
    boolean isWhole() {
        return !rows.isEmpty() && rows.get(0).contains("test");
    }

    /**
     * The cells of each row by column.
     *
     * @param from the cylinder at which a single column begins
     * @throws IllegalArgumentException naming a row with other columns
     */
    List<Map<String, String>> cells(int from) {
        return isWhole() ? byHeader() : byPlace(from);
    }

    private List<Map<String, String>> byHeader() {
        List<Map<String, String>> all = new ArrayList<>();
        for (List<String> row : rows.subList(1, rows.size())) {
            Map<String, String> cells = new LinkedHashMap<>();
            for (int column = 0; column < Math.min(row.size(), rows.get(0).size()); column++) {
                if (!row.get(column).isEmpty()) {
                    cells.put(rows.get(0).get(column), row.get(column));
                }
            }
            all.add(cells);
        }
        return all;
    }

    private List<Map<String, String>> byPlace(int from) {
        List<Map<String, String>> all = new ArrayList<>();
        boolean named = rows.get(0).get(0).toLowerCase(java.util.Locale.ROOT).startsWith(CYLINDER);
        for (List<String> row : rows.subList(named ? 1 : 0, rows.size())) {
            if (row.size() > 2) {
                throw new IllegalArgumentException("Row " + (all.size() + 1) + " has " + row.size()
                        + " columns: paste readings alone, cylinder and reading, or a table with a column named test.");
            }
            String cylinder = row.size() == 2 ? row.get(0) : String.valueOf(from + all.size());
            all.add(Map.of(CYLINDER, cylinder, VALUE, row.get(row.size() - 1)));
        }
        return all;
    }
}
