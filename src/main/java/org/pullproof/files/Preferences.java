package org.pullproof.files;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.pullproof.dyno.ColumnChoice;
import org.pullproof.units.UnitSystem;

/**
 * What one user likes, on one computer. Immutable.
 *
 * @param units the units figures are shown in
 * @param night whether the night colours are on
 * @param recent sessions opened, the last one first, at most {@value #MOST_RECENT}
 * @param window the window's size and place, once it was shown
 * @param sheet the sheet looked at last, by its name
 * @param hintsShut whether the hints on the demo were shut for good
 * @param tables what was told of the columns of foreign tables, the last one first, at most {@value #MOST_TABLES}
 * @param paper the paper chosen last, by its key; none at first
 */
public record Preferences(
        UnitSystem units,
        boolean night,
        List<Path> recent,
        Optional<WindowPlace> window,
        Optional<String> sheet,
        boolean hintsShut,
        List<KnownTable> tables,
        Optional<String> paper) {
    private static final int MOST_RECENT = 8;
    private static final int MOST_TABLES = 30;

    /**
     * What was told of tables with the same headers.
     *
     * @param shape their headers, see {@link org.pullproof.dyno.TableLook#shape}
     * @param columns which column is what
     */
    public record KnownTable(String shape, List<ColumnChoice> columns) {
        public KnownTable {
            columns = List.copyOf(columns);
        }
    }

    /**
     * Size and place of the window, as it was last when it did not fill the screen.
     *
     * @param x of its left edge, in pixels of the screen's scale; negative on a screen left of the first
     * @param y of its upper edge, in the same
     * @param width in the same
     * @param height in the same
     * @param maximised whether it fills the screen
     */
    public record WindowPlace(int x, int y, int width, int height, boolean maximised) {
        public WindowPlace {
            if (width < 200 || height < 200 || width > 20000 || height > 20000) {
                throw new IllegalArgumentException(
                        "A window has 200 to 20000 pixels each way, was " + width + " by " + height);
            }
        }
    }

    public Preferences {
        recent = List.copyOf(recent);
        tables = List.copyOf(tables);
    }

    /** Before anything was chosen: US units, paper. */
    public static Preferences atFirst() {
        return new Preferences(
                UnitSystem.US,
                false,
                List.of(),
                Optional.empty(),
                Optional.empty(),
                false,
                List.of(),
                Optional.empty());
    }

    public Preferences withUnits(UnitSystem next) {
        return new Preferences(next, night, recent, window, sheet, hintsShut, tables, paper);
    }

    public Preferences withNight(boolean next) {
        return new Preferences(units, next, recent, window, sheet, hintsShut, tables, paper);
    }

    public Preferences withWindow(WindowPlace next) {
        return new Preferences(units, night, recent, Optional.of(next), sheet, hintsShut, tables, paper);
    }

    public Preferences withSheet(String next) {
        return new Preferences(units, night, recent, window, Optional.of(next), hintsShut, tables, paper);
    }

    /** What is printed from now on lies on that paper. */
    public Preferences withPaper(String key) {
        return new Preferences(units, night, recent, window, sheet, hintsShut, tables, Optional.of(key));
    }

    /** The hints on the demo are not shown again. */
    public Preferences withHintsShut() {
        return new Preferences(units, night, recent, window, sheet, true, tables, paper);
    }

    /** Puts a session at the head of the recent ones. */
    public Preferences withOpened(Path session) {
        Path whole = session.toAbsolutePath().normalize();
        List<Path> next = Stream.concat(Stream.of(whole), recent.stream())
                .distinct()
                .limit(MOST_RECENT)
                .toList();
        return new Preferences(units, night, next, window, sheet, hintsShut, tables, paper);
    }

    /** Remembers what was told of a table; what was told before of tables like it is forgotten. */
    public Preferences withTable(KnownTable told) {
        Stream<KnownTable> others =
                tables.stream().filter(table -> !table.shape().equals(told.shape()));
        return new Preferences(
                units,
                night,
                recent,
                window,
                sheet,
                hintsShut,
                Stream.concat(Stream.of(told), others).limit(MOST_TABLES).toList(),
                paper);
    }

    /** The session opened last. */
    public Optional<Path> last() {
        return recent.stream().findFirst();
    }
}
