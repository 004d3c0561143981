package org.pullproof.ui.parts;

import javafx.scene.layout.Region;

/** The steps of the look by the size of the window: larger type where it is wide, less space between lines where it is low. */
public final class WindowSteps {
    private static final double WIDE = 1600;
    private static final double LOW = 770;

    private WindowSteps() {}

    /** Gives a page the style class {@code wide} or {@code low} while it has that size. */
    public static void follow(Region page) {
        page.widthProperty().addListener((of, before, after) -> fit(page));
        page.heightProperty().addListener((of, before, after) -> fit(page));
    }

    private static void fit(Region page) {
        boolean wide = page.getWidth() >= WIDE;
        toggle(page, "wide", wide);
        toggle(page, "low", !wide && page.getHeight() > 0 && page.getHeight() < LOW);
    }

    private static void toggle(Region page, String styleClass, boolean on) {
        if (on != page.getStyleClass().contains(styleClass)) {
            if (on) {
                page.getStyleClass().add(styleClass);
            } else {
                page.getStyleClass().remove(styleClass);
            }
        }
    }
}
