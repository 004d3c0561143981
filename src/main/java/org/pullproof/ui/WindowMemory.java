package org.pullproof.ui;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Rectangle2D;
import javafx.stage.Screen;
import javafx.stage.Stage;
import org.pullproof.files.Preferences.WindowPlace;

/** Brings the window back to where it was, if that is still on a screen, and tells where it is now. */
final class WindowMemory {
    /** As much of the upper edge as a hand needs to move a window. */
    private static final double HANDLE = 40;

    private final Stage window;
    private final Optional<WindowPlace> before;

    WindowMemory(Stage window, Optional<WindowPlace> before) {
        this.window = window;
        this.before = before;
    }

    /** Gives the window its size back, and its place where that can still be seen. */
    void restore() {
        List<Rectangle2D> screens =
                Screen.getScreens().stream().map(Screen::getVisualBounds).toList();
        before.ifPresent(place -> restore(place, screens));
    }

    private void restore(WindowPlace place, List<Rectangle2D> screens) {
        window.setWidth(place.width());
        window.setHeight(place.height());
        if (canBeSeen(place, screens)) {
            window.setX(place.x());
            window.setY(place.y());
        }
        window.setMaximized(place.maximised());
    }

    /** Whether the middle of the upper edge lies on one of the screens, so that the window can be seen and moved. */
    static boolean canBeSeen(WindowPlace place, List<Rectangle2D> screens) {
        Rectangle2D handle = new Rectangle2D(
                place.x() + place.width() / 4.0, place.y(), place.width() / 2.0, Math.min(HANDLE, place.height()));
        return screens.stream().anyMatch(screen -> screen.contains(handle));
    }

    /** Where the window is; while it fills the screen, where it was before. Empty if that is not known. */
    Optional<WindowPlace> now() {
        if (window.isMaximized()) {
            return before.map(place -> new WindowPlace(place.x(), place.y(), place.width(), place.height(), true));
        }
        return Optional.of(new WindowPlace(
                whole(window.getX()),
                whole(window.getY()),
                whole(window.getWidth()),
                whole(window.getHeight()),
                false));
    }

    private static int whole(double pixels) {
        return (int) Math.round(pixels);
    }
}
