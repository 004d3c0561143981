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
 * @param window the window's size, once it was shown
 * @param tables what was told of the columns of foreign tables, the last one first, at most {@value #MOST_TABLES}
 */
public record Preferences(
        UnitSystem units, boolean night, List<Path> recent, Optional<WindowSize> window, List<KnownTable> tables) {
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
     * Size of the window.
     *
     * @param width in pixels of the screen's scale
     * @param height in pixels of the screen's scale
     * @param maximised whether it fills the screen
     */
    public record WindowSize(int width, int height, boolean maximised) {
        public WindowSize {
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
        return new Preferences(UnitSystem.US, false, List.of(), Optional.empty(), List.of());
    }

    public Preferences withUnits(UnitSystem next) {
        return new Preferences(next, night, recent, window, tables);
    }

    public Preferences withNight(boolean next) {
        return new Preferences(units, next, recent, window, tables);
    }

    public Preferences withWindow(WindowSize next) {
        return new Preferences(units, night, recent, Optional.of(next), tables);
    }

    /** Puts a session at the head of the recent ones. */
    public Preferences withOpened(Path session) {
        Path whole = session.toAbsolutePath().normalize();
        List<Path> next = Stream.concat(Stream.of(whole), recent.stream())
                .distinct()
                .limit(MOST_RECENT)
                .toList();
        return new Preferences(units, night, next, window, tables);
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
                Stream.concat(Stream.of(told), others).limit(MOST_TABLES).toList());
    }

    /** The session opened last. */
    public Optional<Path> last() {
        return recent.stream().findFirst();
    }
}
