package org.pullproof.files;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.pullproof.units.UnitSystem;

/**
 * What one user likes, on one computer. Immutable.
 *
 * @param units the units figures are shown in
 * @param night whether the night colours are on
 * @param recent sessions opened, the last one first, at most {@value #MOST_RECENT}
 * @param window the window's size, once it was shown
 */
public record Preferences(UnitSystem units, boolean night, List<Path> recent, Optional<WindowSize> window) {
    private static final int MOST_RECENT = 8;

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
    }

    /** Before anything was chosen: US units, paper. */
    public static Preferences atFirst() {
        return new Preferences(UnitSystem.US, false, List.of(), Optional.empty());
    }

    public Preferences withUnits(UnitSystem next) {
        return new Preferences(next, night, recent, window);
    }

    public Preferences withNight(boolean next) {
        return new Preferences(units, next, recent, window);
    }

    public Preferences withWindow(WindowSize next) {
        return new Preferences(units, night, recent, Optional.of(next));
    }

    /** Puts a session at the head of the recent ones. */
    public Preferences withOpened(Path session) {
        Path whole = session.toAbsolutePath().normalize();
        List<Path> next = Stream.concat(Stream.of(whole), recent.stream())
                .distinct()
                .limit(MOST_RECENT)
                .toList();
        return new Preferences(units, night, next, window);
    }

    /** The session opened last. */
    public Optional<Path> last() {
        return recent.stream().findFirst();
    }
}
