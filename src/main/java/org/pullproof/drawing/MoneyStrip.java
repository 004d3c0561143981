package org.pullproof.drawing;

import java.util.List;
import java.util.OptionalDouble;
import org.pullproof.drawing.Pen.Lettering;
import org.pullproof.drawing.Shape.Anchor;
import org.pullproof.drawing.Shape.Stroke;
import org.pullproof.units.Figures;

/** Costs from low over likely to high, one strip an option over one shared axis; the budget is a red dashed line. */
public final class MoneyStrip {
    /**
     * What one strip shows.
     *
     * @param name of the option
     * @param low undercut once in ten times
     * @param likely in the middle
     * @param high exceeded once in ten times
     */
    public record Bar(String name, double low, double likely, double high) {}

    private static final double LEFT = 8;
    private static final double RIGHT = 22;
    private static final double BAR = 14;
    private static final double BETWEEN = 6;
    private static final int MOST_TICKS = 5;

    private final Ticks ticks;
    private final String currency;
    private final OptionalDouble budget;
    private final Scale scale;
    private final double width;

    /**
     * @param bars what stands over the shared axis
     * @param budget money that may still be spent, if the owner told it; a negative rest is drawn at 0
     * @param currency of all figures
     * @param width of each strip, px
     */
    public MoneyStrip(List<Bar> bars, OptionalDouble budget, String currency, double width) {
        this.currency = currency;
        this.budget = budget;
        this.width = width;
        double high = Math.max(1, most(bars, budget));
        double low = bars.stream().mapToDouble(Bar::low).min().orElse(0);
        this.ticks = Ticks.covering(Math.min(0, low), high, MOST_TICKS);
        this.scale = new Scale(ticks.low(), ticks.high(), LEFT, width - RIGHT);
    }

    private static double most(List<Bar> bars, OptionalDouble budget) {
        double costs = bars.stream().mapToDouble(Bar::high).max().orElse(0);
        return Math.max(costs, budget.orElse(0));
    }

    /** The figures of the axis, to stand over the strips. */
    public Drawing axis(double height) {
        Pen pen = new Pen();
        double free = 0;
        for (double value : ticks.values()) {
            String words = Figures.money(value, currency);
            double half = Lettering.FAINT.widthOf(words) / 2;
            double x = Math.max(half, Math.min(width - half, scale.of(value)));
            // a figure without room beside the one before is left out, its line stays
            if (x - half >= free) {
                pen.text(words, x, height - 4, Anchor.MIDDLE, Lettering.FAINT);
                free = x + half + BETWEEN;
            }
        }
        return pen.picture(width, height, "axis: money still to spend, " + currency);
    }

    /** One option. */
    public Drawing strip(Bar option, double height) {
        Pen pen = new Pen();
        for (double value : ticks.values()) {
            pen.line(scale.of(value), 0, scale.of(value), height, Stroke.of(Ink.GRID, 1));
        }
        budget.ifPresent(rest ->
                pen.line(scale.within(rest), 0, scale.within(rest), height, Stroke.dashed(Ink.RED, 1.2, 5.0, 3.0)));
        bar(pen, option);
        figures(pen, option);
        return pen.picture(width, height, title(option));
    }

    private void bar(Pen pen, Bar option) {
        double low = scale.of(option.low());
        double high = scale.of(option.high());
        Stroke stroke = Stroke.of(Ink.INK, 2);
        if (high - low >= 1) {
            pen.line(low, BAR, high, BAR, stroke);
            pen.line(low, BAR - 5, low, BAR + 5, stroke).line(high, BAR - 5, high, BAR + 5, stroke);
        }
        pen.disc(scale.of(option.likely()), BAR, 4, Ink.INK);
    }

    /** Low · likely · high below the bar, moved left as far as needed to stay in the picture. */
    private void figures(Pen pen, Bar option) {
        Lettering second = Lettering.SECOND;
        Lettering strong = Lettering.STRONG;
        String likely = money(option.likely());
        if (option.low() == option.high()) {
            place(pen, List.of(likely), List.of(strong), scale.of(option.likely()) - 4);
            return;
        }
        List<String> words = List.of(money(option.low()) + " · ", likely, " · " + money(option.high()));
        place(pen, words, List.of(second, strong, second), scale.of(option.low()) - 1);
    }

    private void place(Pen pen, List<String> words, List<Lettering> as, double wanted) {
        double total = 0;
        for (int i = 0; i < words.size(); i++) {
            total += as.get(i).widthOf(words.get(i));
        }
        double x = Math.max(0, Math.min(wanted, width - total));
        // one ground for all words: a halo of each would cover the end of the one before it
        pen.block(x, BAR + 8, total, 14, Ink.SHEET);
        for (int i = 0; i < words.size(); i++) {
            pen.text(words.get(i), x, BAR + 19, Anchor.START, as.get(i));
            x += as.get(i).widthOf(words.get(i));
        }
    }

    private String money(double sum) {
        return Figures.money(sum, currency);
    }

    private String title(Bar option) {
        return option.name() + ": " + money(option.low()) + " to " + money(option.high()) + ", likely "
                + money(option.likely());
    }
}
