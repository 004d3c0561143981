package org.pullproof.ui.parts;

import javafx.scene.paint.Color;

/**
 * Contrast of two colours. Formula: WCAG 2.1, "relative luminance" and "contrast ratio",
 * {@code (lighter + 0.05) / (darker + 0.05)}.
 */
public final class Contrast {
    private Contrast() {}

    /** From 1, the same colour, to 21, black on white. */
    public static double of(Color one, Color other) {
        double lighter = Math.max(luminance(one), luminance(other));
        double darker = Math.min(luminance(one), luminance(other));
        return (lighter + 0.05) / (darker + 0.05);
    }

    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(double channel) {
        return channel <= 0.03928 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4);
    }
}
