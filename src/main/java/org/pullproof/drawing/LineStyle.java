package org.pullproof.drawing;

import java.util.List;
import org.pullproof.drawing.Shape.Stroke;
import org.pullproof.dyno.DynoFindings;

/** The line of each setup: the first unbroken, the others told apart by their dashes, never by colour. */
public final class LineStyle {
    private static final List<List<Double>> DASHES = List.of(
            List.of(11.0, 4.0),
            List.of(9.0, 3.0, 2.0, 3.0),
            List.of(2.0, 3.0),
            List.of(18.0, 4.0),
            List.of(9.0, 3.0, 2.0, 3.0, 2.0, 3.0));

    private LineStyle() {}

    /** The setups in order of their first pull, counted or not: the order that tells their lines and never changes. */
    public static List<String> setups(DynoFindings findings) {
        return findings.pulls().stream()
                .map(pull -> pull.pull().setup())
                .distinct()
                .toList();
    }

    /**
     * @param order place of the setup among those with pulls, from 0; it never changes
     * @param chosen whether it is the setup looked at
     */
    public static Stroke of(int order, boolean chosen) {
        List<Double> dash = order == 0 ? List.of() : DASHES.get((order - 1) % DASHES.size());
        return chosen ? new Stroke(Ink.BLUE, 2.2, dash) : new Stroke(Ink.INK, 1.5, dash);
    }

    /** A short piece of the line, to stand before the name of a pull. */
    public static Drawing sample(int order, boolean chosen) {
        return new Pen().line(0, 5, 26, 5, of(order, chosen)).picture(28, 10, "line of the setup");
    }
}
