package org.pullproof.report;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.pullproof.drawing.Ink;

/**
 * The colours of the look's inks. Immutable; every ink has one.
 *
 * @param colours by ink, each {@code #rrggbb}: SVG readers differ in what else they understand
 */
public record Palette(Map<Ink, String> colours) {
    public Palette {
        for (Ink ink : Ink.values()) {
            String colour = colours.getOrDefault(ink, "none");
            if (!colour.matches("#[0-9a-f]{6}")) {
                throw new IllegalArgumentException("A colour is #rrggbb, but " + ink + " was " + colour);
            }
        }
        colours = Map.copyOf(colours);
    }

    /** The look on paper, for pictures on a screen. */
    public static Palette paper() {
        Map<Ink, String> colours = new EnumMap<>(Ink.class);
        colours.put(Ink.SHEET, "#fbfbf7");
        colours.put(Ink.DESK, "#e6e8e1");
        colours.put(Ink.WELL, "#f0f2eb");
        colours.put(Ink.INK, "#17212c");
        colours.put(Ink.INK2, "#47525c");
        colours.put(Ink.INK3, "#58626a");
        colours.put(Ink.RULE2, "#747d7f");
        colours.put(Ink.RULE, "#cbcfc6");
        colours.put(Ink.GRID, "#e4e7df");
        colours.put(Ink.BLUE, "#1b4f91");
        colours.put(Ink.BLUEWASH, "#dfe8f2");
        colours.put(Ink.RED, "#a5341f");
        colours.put(Ink.REDWASH, "#f5e1da");
        colours.put(Ink.ONFILL, "#fbfbf7");
        return new Palette(colours);
    }

    /** Black on white: the two pencils become ink, so a printer without colours loses nothing. */
    public static Palette print() {
        Map<Ink, String> colours = new EnumMap<>(paper().colours);
        colours.put(Ink.SHEET, "#ffffff");
        colours.put(Ink.ONFILL, "#ffffff");
        colours.put(Ink.BLUE, paper().of(Ink.INK));
        colours.put(Ink.RED, paper().of(Ink.INK));
        colours.put(Ink.BLUEWASH, paper().of(Ink.WELL));
        colours.put(Ink.REDWASH, paper().of(Ink.WELL));
        return new Palette(colours);
    }

    /** The colour of an ink, {@code #rrggbb}. */
    public String of(Ink ink) {
        return Objects.requireNonNull(colours.get(ink), () -> ink.name().toLowerCase(Locale.ROOT));
    }
}
