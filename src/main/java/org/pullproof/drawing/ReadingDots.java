package org.pullproof.drawing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.DoubleStream;
import org.pullproof.drawing.Pen.Lettering;
import org.pullproof.drawing.Shape.Anchor;
import org.pullproof.drawing.Shape.Stroke;
import org.pullproof.units.Figures;

/** What one test read at each cylinder, side by side: a dot a cylinder, in order of their numbers; a low one is ringed and written out. */
public final class ReadingDots {
    private static final double LEFT = 34;
    private static final double RIGHT = 12;
    private static final double TOP = 28;
    private static final double BOTTOM = 22;
    private static final int MOST_TICKS = 4;
    private static final double DOT = 3.2;
    private static final double RING = 7;

    private final Test test;
    private final double width;
    private final double height;
    private final Ticks ticks;
    private final Scale x;
    private final Scale y;
    private final Pen pen = new Pen();

    /**
     * One test.
     *
     * @param title in a word or two: "Drop"
     * @param detail its unit and what a reader should know of it
     * @param fromZero whether the axis begins at zero; else it encloses the readings
     * @param figures by cylinder, 1 first, in the unit that {@code detail} names; absent where nothing was read
     * @param low cylinders that are low, to be ringed
     */
    public record Test(String title, String detail, boolean fromZero, List<OptionalDouble> figures, Set<Integer> low) {
        public Test {
            figures = List.copyOf(figures);
            low = Set.copyOf(low);
        }

        private DoubleStream read() {
            return figures.stream().flatMapToDouble(OptionalDouble::stream);
        }
    }

    private ReadingDots(Test test, double width, double height) {
        this.test = test;
        this.width = width;
        this.height = height;
        double least = test.fromZero() ? 0 : test.read().min().orElse(0);
        double most = test.read().max().orElse(1);
        this.ticks = Ticks.covering(least, Math.max(most, least), MOST_TICKS);
        this.x = new Scale(1, Math.max(2, test.figures().size()), LEFT + 14, width - RIGHT - 14);
        this.y = new Scale(ticks.low(), ticks.high(), height - BOTTOM, TOP);
    }

    /** Returns the picture; without readings it says what will stand there. */
    public static Drawing of(Test test, double width, double height) {
        return new ReadingDots(test, width, height).draw();
    }

    private Drawing draw() {
        Lettering strong = Lettering.STRONG;
        pen.text(test.title(), 0, 12, Anchor.START, strong);
        pen.text(test.detail(), strong.widthOf(test.title()) + 8, 12, Anchor.START, Lettering.FAINT);
        if (test.read().findAny().isEmpty()) {
            pen.polyline(
                    Stroke.dashed(Ink.RULE, 1, 5.0, 4.0),
                    LEFT,
                    TOP,
                    LEFT,
                    height - BOTTOM,
                    width - RIGHT,
                    height - BOTTOM);
            pen.text("not read yet", width / 2, height / 2 + 4, Anchor.MIDDLE, Lettering.FAINT);
            return pen.picture(width, height, spoken());
        }
        for (double value : ticks.values()) {
            Stroke line = value == ticks.low() ? Stroke.of(Ink.RULE2, 1) : Stroke.of(Ink.GRID, 1);
            pen.line(LEFT, y.of(value), width - RIGHT, y.of(value), line);
            pen.text(Figures.number(value, ticks.decimals()), LEFT - 6, y.of(value) + 4, Anchor.END, Lettering.FAINT);
        }
        for (int number = 1; number <= test.figures().size(); number++) {
            cylinder(number, test.figures().get(number - 1));
        }
        return pen.picture(width, height, spoken());
    }

    private void cylinder(int number, OptionalDouble figure) {
        boolean low = test.low().contains(number);
        pen.text(
                String.valueOf(number),
                x.of(number),
                height - 6,
                Anchor.MIDDLE,
                low ? Lettering.STRONG : Lettering.FAINT);
        if (figure.isEmpty()) {
            pen.text("–", x.of(number), height - BOTTOM - 5, Anchor.MIDDLE, Lettering.FAINT);
            return;
        }
        double at = y.of(figure.getAsDouble());
        pen.disc(x.of(number), at, DOT, Ink.INK);
        if (low) {
            pen.circle(x.of(number), at, RING, Stroke.of(Ink.RED, 1.4));
            boolean last = number == test.figures().size();
            pen.text(
                    Figures.number(figure.getAsDouble(), 0),
                    x.of(number) + (last ? -1 : 1) * (RING + 4),
                    at + 4,
                    last ? Anchor.END : Anchor.START,
                    Lettering.STRONG.onHalo());
        }
    }

    private String spoken() {
        StringBuilder words = new StringBuilder(test.title() + ", " + test.detail() + ":");
        for (int number = 1; number <= test.figures().size(); number++) {
            OptionalDouble figure = test.figures().get(number - 1);
            Optional<String> read =
                    figure.isPresent() ? Optional.of(Figures.number(figure.getAsDouble(), 0)) : Optional.empty();
            words.append(" ")
                    .append(number)
                    .append(" ")
                    .append(read.orElse("not read"))
                    .append(";");
        }
        return words.substring(0, words.length() - 1);
    }
}
