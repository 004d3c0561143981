package org.pullproof.ui;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.text.Text;
import org.pullproof.ui.parts.Contrast;

/**
 * Every pair of a text colour and the ground below it that was seen, each with the words it was seen at. Limits: WCAG 2.1, success
 * criterion 1.4.3: 4.5, for large text 3; large is 24 px, or 18.66 px where bold.
 */
final class ColoursInUse {
    private static final double LARGE = 24;
    private final Map<Pair, String> seen = new LinkedHashMap<>();

    /** Colours of words and ground, and whether the words are large. */
    record Pair(Color words, Color ground, boolean large) {
        double contrast() {
            return Contrast.of(words, ground);
        }

        boolean stands() {
            return contrast() >= (large ? 3 : 4.5);
        }
    }

    void look(Node node, String where) {
        if (!node.isVisible() || node.getOpacity() < 1) {
            return;
        }
        if (node instanceof Text text && !text.getText().isBlank() && text.getFill() instanceof Color fill) {
            ground(node)
                    .ifPresent(ground -> seen.putIfAbsent(
                            new Pair(fill, ground, text.getFont().getSize() >= LARGE), where + ": " + text.getText()));
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> look(child, where));
        }
    }

    /** The uppermost opaque fill of the nearest box around the words that has one. */
    private static Optional<Color> ground(Node words) {
        return Stream.<Node>iterate(words.getParent(), node -> node != null, Node::getParent)
                .filter(Region.class::isInstance)
                .map(Region.class::cast)
                .filter(region -> region.getBackground() != null)
                .flatMap(region -> fills(region).stream())
                .findFirst();
    }

    private static List<Color> fills(Region region) {
        List<Color> fills = new ArrayList<>();
        for (BackgroundFill fill : region.getBackground().getFills()) {
            if (fill.getFill() instanceof Color colour && colour.isOpaque()) {
                fills.add(0, colour);
            }
        }
        return fills;
    }

    /** Pairs that are too close to be read, each with where it was seen. */
    List<String> tooClose() {
        return seen.entrySet().stream()
                .filter(pair -> !pair.getKey().stands())
                .map(pair -> line(pair.getKey()) + " at " + pair.getValue())
                .toList();
    }

    /** All pairs, the closest first. */
    String table() {
        return seen.keySet().stream()
                .sorted(java.util.Comparator.comparingDouble(Pair::contrast))
                .map(ColoursInUse::line)
                .reduce("words on ground, size, contrast", (lines, line) -> lines + "\n" + line);
    }

    int size() {
        return seen.size();
    }

    private static String line(Pair pair) {
        return String.format(
                Locale.ROOT,
                "%s on %s, %s, %.1f",
                web(pair.words()),
                web(pair.ground()),
                pair.large() ? "large" : "text",
                pair.contrast());
    }

    private static String web(Color colour) {
        return colour.toString().substring(2, 8).toUpperCase(Locale.ROOT);
    }
}
