package org.pullproof.ui.parts;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import javafx.scene.text.Font;
import org.pullproof.drawing.Typeface;

/** The typefaces of the look. JavaFX knows each weight as a family of its own; asking by weight gives Regular. */
public final class Fonts {
    private static final List<String> FILES = List.of(
            "SourceSerif4-Regular",
            "SourceSerif4-SemiBold",
            "SourceSerif4-Italic",
            "IBMPlexSans-Regular",
            "IBMPlexSans-Medium",
            "IBMPlexSans-SemiBold",
            "IBMPlexSansCondensed-Regular",
            "IBMPlexSansCondensed-Medium",
            "IBMPlexSansCondensed-SemiBold");

    private static final int MEDIUM = 500;
    private static final int SEMI_BOLD = 600;

    private Fonts() {}

    /** Makes the nine files known to JavaFX; call once before the first scene. */
    public static void load() {
        FILES.forEach(Fonts::load);
    }

    private static void load(String name) {
        try (InputStream file = Fonts.class.getResourceAsStream("/org/pullproof/fonts/" + name + ".ttf")) {
            if (file == null || Font.loadFont(file, 12) == null) {
                throw new IllegalStateException("The typeface " + name + " is missing from the program");
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /**
     * A font of the look.
     *
     * @param weight 400, 500 or 600; Source Serif has no 500 and gives Regular
     * @param size in px
     */
    public static Font of(Typeface face, int weight, double size) {
        return Font.font(family(face, weight), size);
    }

    private static String family(Typeface face, int weight) {
        return switch (face) {
            case TEXT -> "IBM Plex Sans" + suffix(weight);
            case NARROW -> "IBM Plex Sans Condensed" + suffix(weight);
            case VOICE -> weight >= SEMI_BOLD ? "Source Serif 4 SemiBold" : "Source Serif 4";
        };
    }

    private static String suffix(int weight) {
        if (weight >= SEMI_BOLD) {
            return " SemiBold";
        }
        return weight >= MEDIUM ? " Medium" : "";
    }
}
