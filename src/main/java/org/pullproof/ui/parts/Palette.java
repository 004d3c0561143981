package org.pullproof.ui.parts;

import java.util.EnumMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import javafx.scene.paint.Color;
import org.pullproof.drawing.Ink;

/**
 * The colours of the look for canvases, which no stylesheet reaches; the same values stand in {@code pullproof.css} for
 * everything else. Immutable.
 *
 * @param colours one for every ink
 */
public record Palette(Map<Ink, Color> colours) {
    private static final Palette PAPER = of(
            "FBFBF7", "E6E8E1", "F0F2EB", "17212C", "47525C", "58626A", "747D7F", "CBCFC6", "E4E7DF", "1B4F91",
            "DFE8F2", "A5341F", "F5E1DA", "FBFBF7");

    private static final Palette NIGHT = of(
            "161B1F", "0E1215", "1F272C", "ECE7DB", "BDBBB1", "969A95", "788289", "343D43", "242C31", "92BAEC",
            "1E3048", "F39A82", "43281F", "10161A");

    public Palette {
        colours = Map.copyOf(colours);
    }

    public static Palette paper() {
        return PAPER;
    }

    public static Palette night() {
        return NIGHT;
    }

    public Color of(Ink ink) {
        return colours.getOrDefault(ink, Color.TRANSPARENT);
    }

    /** Takes the colours in the order of {@link Ink}. */
    private static Palette of(String... hex) {
        Map<Ink, Color> colours = new EnumMap<>(Ink.class);
        Iterator<String> next = List.of(hex).iterator();
        for (Ink ink : Ink.values()) {
            colours.put(ink, Color.web(next.next()));
        }
        return new Palette(colours);
    }
}
