package org.pullproof.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pullproof.drawing.Pen.Lettering;
import org.pullproof.drawing.Shape.Anchor;
import org.pullproof.drawing.Shape.Point;
import org.pullproof.drawing.Shape.Stroke;
import org.pullproof.engine.Bank;
import org.pullproof.engine.EngineProfile;
import org.pullproof.health.HealthFindings.CylinderFindings;
import org.pullproof.health.HealthFindings.State;
import org.pullproof.units.Figures;
import org.pullproof.units.Shown;

/**
 * The cylinders as tiles at their places on the engine, seen from above with the front to the left: number, words, dry
 * compression and leak. A state is told by words first and by the tile's shape second.
 */
public final class TilePlan {
    private static final double GAP = 6;
    private static final double STAGGER = 10;
    private static final double CRANK = 16;
    private static final double WIDEST = 240;
    private static final double INSET = 28;
    private static final double LINE = 14;
    private static final Lettering WORDS = new Lettering(Typeface.TEXT, 11.5, 400, Ink.INK, false);
    private static final Lettering STRONG = new Lettering(Typeface.TEXT, 11.5, 600, Ink.INK, false);
    private static final Lettering NUMBER = Lettering.narrow(19, 500, Ink.INK);
    private static final Lettering FIGURE = Lettering.narrow(14, 500, Ink.INK);

    private final EngineProfile profile;
    private final List<CylinderFindings> cylinders;
    private final Figures figures;
    private final double width;
    private final double tileWidth;
    private final int readingLines;
    private final double tileHeight;
    private final Pen pen = new Pen();

    private TilePlan(EngineProfile profile, List<CylinderFindings> cylinders, Figures figures, double width) {
        this.profile = profile;
        this.cylinders = cylinders;
        this.figures = figures;
        this.width = width;
        this.tileWidth = tileWidth();
        this.readingLines = readingLines();
        this.tileHeight = 15 + LINE * mostLines() + 17 * readingLines;
    }

    /**
     * @param cylinders findings of every cylinder of the profile
     * @param figures units of the pressures
     * @param width px; the height follows from the words
     */
    public static Drawing of(EngineProfile profile, List<CylinderFindings> cylinders, Figures figures, double width) {
        return new TilePlan(profile, cylinders, figures, width).draw();
    }

    private double tileWidth() {
        int longest = profile.banks().stream()
                .mapToInt(bank -> bank.cylinders().size())
                .max()
                .orElse(1);
        double room = width - (profile.banks().size() > 1 ? STAGGER : 0);
        return Math.min(WIDEST, (room - GAP * (longest - 1)) / longest);
    }

    private int mostLines() {
        return cylinders.stream()
                .mapToInt(cylinder -> lines(cylinder).size())
                .max()
                .orElse(1);
    }

    private Drawing draw() {
        List<Bank> banks = EnginePlan.fromTop(profile);
        double y = 1;
        for (int row = 0; row < banks.size(); row++) {
            bank(banks.get(row), y);
            y += tileHeight;
            if (row == 0) {
                crank(y + CRANK / 2);
                y += CRANK;
            }
        }
        return pen.picture(width, y + 1, "The cylinders from above, front to the left: " + told());
    }

    private String told() {
        return String.join(
                "; ",
                cylinders.stream()
                        .map(cylinder -> cylinder.number() + " " + cylinder.words())
                        .toList());
    }

    private void crank(double y) {
        pen.line(30, y, width - 2, y, Stroke.dashed(Ink.INK2, 0.8, 14.0, 3.0, 3.0, 3.0));
        pen.line(26, y, 3, y, Stroke.of(Ink.INK, 1)).polyline(Stroke.of(Ink.INK, 1), 8, y - 4, 3, y, 8, y + 4);
    }

    private void bank(Bank bank, double y) {
        double shift = EnginePlan.stagger(profile, bank) > 0 ? STAGGER : 0;
        for (int i = 0; i < bank.cylinders().size(); i++) {
            tile(findings(bank.cylinders().get(i)), 1 + shift + i * (tileWidth + GAP), y);
        }
    }

    private CylinderFindings findings(int number) {
        return cylinders.stream()
                .filter(cylinder -> cylinder.number() == number)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No findings of cylinder " + number));
    }

    private void tile(CylinderFindings cylinder, double x, double y) {
        frame(cylinder.state(), x, y, tileWidth - 2);
        pen.text(String.valueOf(cylinder.number()), x + 8, y + 20, Anchor.START, NUMBER);
        List<String> words = lines(cylinder);
        for (int i = 0; i < words.size(); i++) {
            pen.text(words.get(i), x + INSET, y + 15 + i * LINE, Anchor.START, lettering(cylinder));
        }
        readings(cylinder, x, y + tileHeight - 9);
    }

    /** Both readings on one line, or the leak below where one of the tiles has no room for that. */
    private void readings(CylinderFindings cylinder, double x, double y) {
        double above = readingLines > 1 ? LINE + 3 : 0;
        pen.text(dry(cylinder), x + INSET, y - above, Anchor.START, FIGURE);
        pen.text(leak(cylinder), x + tileWidth - 10, y, Anchor.END, FIGURE);
    }

    private int readingLines() {
        boolean oneLine = cylinders.stream()
                .allMatch(cylinder ->
                        FIGURE.widthOf(dry(cylinder)) + FIGURE.widthOf(leak(cylinder)) + 12 < tileWidth - INSET - 10);
        return oneLine ? 1 : 2;
    }

    private String dry(CylinderFindings cylinder) {
        return cylinder.dry()
                .map(read -> figures.of(read.si(), Shown.COMPRESSION))
                .orElse("–");
    }

    /** The figure, or the tester's words where it showed a zone. */
    private static String leak(CylinderFindings cylinder) {
        Optional<String> figure = cylinder.leakPercent().isPresent()
                ? Optional.of(Figures.percent(cylinder.leakPercent().getAsDouble(), 0))
                : cylinder.leakWords();
        return figure.map(words -> words + " leak").orElse("–");
    }

    private void frame(State state, double x, double y, double w) {
        double h = tileHeight;
        switch (state) {
            case LEVEL -> pen.outlined(x, y, w, h, 0, Stroke.of(Ink.RULE2, 1), Ink.SHEET);
            case LOW -> {
                pen.outlined(x, y, w, h, 0, Stroke.of(Ink.INK, 2), Ink.REDWASH);
                pen.filled(Ink.INK, x + w - 12, y, x + w, y, x + w, y + 12);
            }
            case IN_DOUBT -> {
                pen.filled(Ink.SHEET, x, y, x + w - 12, y, x + w, y + 12, x + w, y + h, x, y + h);
                pen.path(cutCorner(x, y, w, h), Stroke.of(Ink.INK, 1));
            }
            case NOT_MEASURED -> pen.outlined(x, y, w, h, 0, Stroke.dashed(Ink.RULE2, 1, 4.0, 3.0), Ink.SHEET);
            case NOT_COMPARABLE -> {
                pen.outlined(x, y, w, h, 0, Stroke.of(Ink.RULE2, 1), Ink.SHEET);
                hatch(x + w - 10, y, h);
            }
        }
    }

    private static List<Point> cutCorner(double x, double y, double w, double h) {
        return List.of(
                new Point(x, y),
                new Point(x + w - 12, y),
                new Point(x + w, y + 12),
                new Point(x + w, y + h),
                new Point(x, y + h),
                new Point(x, y));
    }

    private void hatch(double x, double y, double h) {
        for (double at = 0; at + 10 <= h; at += 6) {
            pen.line(x, y + at + 10, x + 10, y + at, Stroke.of(Ink.RULE2, 0.8));
        }
    }

    private static Lettering lettering(CylinderFindings cylinder) {
        return cylinder.state() == State.LOW ? STRONG : WORDS;
    }

    /** The words of a tile in as many lines as they need. */
    private List<String> lines(CylinderFindings cylinder) {
        double room = tileWidth - INSET - 16;
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : cylinder.words().split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && lettering(cylinder).widthOf(longer) > room) {
                lines.add(line);
                longer = word;
            }
            line = longer;
        }
        lines.add(line);
        return lines;
    }
}
