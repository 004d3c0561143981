package org.pullproof.report;

import static org.pullproof.report.Block.Column.drawn;
import static org.pullproof.report.Block.Column.figures;
import static org.pullproof.report.Block.Column.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pullproof.advice.Appraisal;
import org.pullproof.drawing.MoneyStrip;
import org.pullproof.report.ReportModel.Item;
import org.pullproof.report.ReportModel.Section;
import org.pullproof.units.Figures;
import org.pullproof.units.Money;
import org.pullproof.units.Shown;
import org.pullproof.worth.Option;
import org.pullproof.worth.Spending;
import org.pullproof.worth.WorthFindings;

/** The money: spent, left, and what more of it could buy. */
record WorthSection(Appraisal appraisal, Wording wording) {
    private static final double STRIP_WIDTH = 180;
    private static final double STRIP_HEIGHT = 40;
    private static final double AXIS_HEIGHT = 16;

    /** Nothing while nothing is spent and nothing offered. */
    Optional<Section> section() {
        WorthFindings worth = appraisal.worth();
        List<Block> blocks = new ArrayList<>();
        if (!worth.options().isEmpty()) {
            blocks.add(options(worth));
        }
        if (!worth.done().isEmpty()) {
            blocks.add(done(worth));
        }
        List<Spending> spent = appraisal.session().money().spent();
        if (!spent.isEmpty()) {
            blocks.add(spent(spent));
        }
        if (blocks.isEmpty()) {
            return Optional.empty();
        }
        blocks.add(0, sums(worth));
        return Optional.of(new Section("worth", "Money", "what is spent does not count in what comes next", blocks));
    }

    private static Block sums(WorthFindings worth) {
        List<Item> items = new ArrayList<>();
        items.add(new Item("spent", "Spent", Figures.money(worth.spent())));
        worth.budgetLeft().ifPresent(left -> items.add(new Item("budgetLeft", "Budget left", Figures.money(left))));
        return new Block.Items(items);
    }

    private Block options(WorthFindings worth) {
        MoneyStrip strips = new MoneyStrip(
                worth.options().stream().map(WorthFindings.Row::option).toList(),
                worth.budgetLeft().map(left -> OptionalDouble.of(left.value())).orElse(OptionalDouble.empty()),
                worth.currency(),
                STRIP_WIDTH);
        return new Block.Table(
                "options",
                "What more money could buy, cheapest first",
                List.of(
                        words("name", "Option"),
                        drawn("cost", "Cost, likely (1 in 10 under, 1 in 10 over)", strips.axis(AXIS_HEIGHT)),
                        figures("hours", "Own hours"),
                        words("gain", "Expected gain, " + wording.unit(Shown.POWER) + " at the wheels"),
                        words("costPerHp", "Money for one hp"),
                        words("basis", "Figures")),
                worth.options().stream().map(row -> row(row, strips)).toList());
    }

    private static List<Cell> row(WorthFindings.Row row, MoneyStrip strips) {
        Option option = row.option();
        return List.of(
                Cell.words(option.name() + (row.overBudget() ? " (over the budget left)" : "")),
                Cell.words(range(option.likely(), option.low(), option.high()))
                        .drawn(strips.strip(option, STRIP_HEIGHT)),
                Cell.figure(Figures.number(option.hours(), 1), option.hours()),
                Cell.words(row.gainHp().map(WorthSection::range)),
                Cell.words(row.costPerHp().words()),
                Cell.words(option.judgement() ? "judgement" : "the owner's"));
    }

    private static String range(Money likely, Money low, Money high) {
        return Figures.money(likely) + " (" + Figures.money(low) + " to " + Figures.money(high) + ")";
    }

    private static String range(WorthFindings.Range gain) {
        return Figures.number(gain.likely(), 1) + " (" + Figures.number(gain.low(), 1) + " to "
                + Figures.number(gain.high(), 1) + ")";
    }

    private static Block done(WorthFindings worth) {
        return new Block.Table(
                "paid",
                "What the changes cost",
                List.of(words("change", "Change"), words("cost", "Cost"), words("costPerHp", "Money for one hp")),
                worth.done().stream()
                        .map(paid -> List.of(
                                Cell.words(paid.change()),
                                Cell.words(Figures.money(paid.cost())),
                                Cell.words(paid.costPerHp().words())))
                        .toList());
    }

    private static Block spent(List<Spending> spent) {
        return new Block.Table(
                "spendings",
                "What was spent",
                List.of(words("date", "Date"), words("what", "For"), figures("amount", "Amount")),
                spent.stream()
                        .map(one -> List.of(
                                Cell.words(Wording.day(one.date())),
                                Cell.words(one.what()),
                                Cell.figure(
                                        Figures.money(one.amount()),
                                        one.amount().value())))
                        .toList());
    }
}
