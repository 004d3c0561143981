package org.pullproof.drawing;

import java.util.Comparator;
import java.util.List;
import org.pullproof.drawing.Pen.Lettering;
import org.pullproof.drawing.Shape.Anchor;
import org.pullproof.drawing.Shape.Point;
import org.pullproof.drawing.Shape.Stroke;

/**
 * The end of a line with the name that stands there.
 *
 * @param name of the setup
 * @param end of its line
 * @param chosen whether it is the setup looked at
 * @param base whether it is the first setup
 */
record LineEnd(String name, Point end, boolean chosen, boolean base) {

    /**
     * Writes the names in a column right of the panel, each with a short leader; if there is no room for all, the chosen setup
     * and base come first.
     */
    static void write(Pen pen, List<LineEnd> ends, double right, double room, double gap, double low, double high) {
        List<LineEnd> named = ends.stream()
                .sorted(Comparator.comparing(LineEnd::chosen)
                        .thenComparing(LineEnd::base)
                        .reversed())
                .limit(Apart.fitting(gap, low, high))
                .toList();
        List<Double> places =
                Apart.spread(named.stream().map(line -> line.end.y()).toList(), gap, low, high);
        for (int i = 0; i < named.size(); i++) {
            named.get(i).write(pen, right, room, places.get(i));
        }
    }

    private void write(Pen pen, double right, double room, double y) {
        Stroke thin = Stroke.of(chosen ? Ink.BLUE : Ink.INK2, 0.8);
        pen.polyline(thin, end.x() + 1, end.y(), Math.max(end.x() + 1, right + 9), y, right + 13, y);
        Lettering as = chosen ? Lettering.STRONG.in(Ink.BLUE) : Lettering.PLAIN;
        pen.text(shortened(as, room), right + 17, y + 4, Anchor.START, as);
    }

    private String shortened(Lettering as, double room) {
        String shown = name;
        while (shown.length() > 1 && as.widthOf(shown) > room) {
            shown = shown.replaceAll("…$", "");
            shown = shown.substring(0, shown.length() - 1) + "…";
        }
        return shown;
    }
}
