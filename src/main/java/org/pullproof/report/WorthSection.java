package org.pullproof.report;

import static org.pullproof.report.Block.Column.drawn;
import static org.pullproof.report.Block.Column.figures;
import static org.pullproof.report.Block.Column.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.pullproof.advice.Appraisal;
import org.pullproof.car.Fact;
import org.pullproof.drawing.MoneyStrip;
import org.pullproof.report.ReportModel.Section;
import org.pullproof.units.Figures;
import org.pullproof.worth.AnswerRows;
import org.pullproof.worth.Spending;
import org.pullproof.worth.WorthFindings;
import org.pullproof.worth.decision.answer.Answer;
import org.pullproof.worth.decision.answer.OptionAnswer;
import org.pullproof.worth.decision.answer.PurchaseAnswer;
import org.pullproof.worth.decision.answer.Remark;
import org.pullproof.worth.decision.answer.TestAnswer;
import org.pullproof.worth.decision.problem.OwnerInputs;
import org.pullproof.worth.trade.JudgedNumber;

/** The decision: options side by side, what would flip it, tests by what they are worth; before purchase the negotiation. */
record WorthSection(Appraisal appraisal, Wording wording) {
    private static final double STRIP_WIDTH = 172;
    private static final double STRIP_HEIGHT = 40;
    private static final double AXIS_HEIGHT = 16;

    /** While it is too early to weigh, what the owner told; nothing if that is nothing. */
    List<Section> sections() {
        WorthFindings worth = appraisal.worth();
        if (worth.tooEarly()) {
            return told().map(items -> new Section("worth", "Money", "as told by the owner", List.of(items))).stream()
                    .toList();
        }
        AnswerRows rows = new AnswerRows(worth.weighing().answer(), appraisal.figures());
        List<Section> sections = new ArrayList<>();
        rows.answer().purchase().map(purchase -> negotiation(rows, purchase)).ifPresent(sections::add);
        sections.add(new Section(
                "worth", "Money", "what is spent does not count in what comes next", decision(worth, rows)));
        return sections;
    }

    /** What the owner told of money that the weighing does not say again. */
    private List<ReportModel.Item> toldBesides() {
        Set<String> besides = Set.of(Fact.PRICE.key(), Fact.LEAST_PRICE.key(), Fact.SMALLEST_DIFFERENCE.key());
        return new ToldFacts(appraisal.session().car())
                .ofThePurse().stream()
                        .filter(item -> besides.contains(item.key()))
                        .toList();
    }

    private Optional<Block> told() {
        List<ReportModel.Item> items = new ToldFacts(appraisal.session().car()).ofThePurse();
        return items.isEmpty() ? Optional.empty() : Optional.of(new Block.Items(items));
    }

    private List<Block> decision(WorthFindings worth, AnswerRows rows) {
        Answer answer = rows.answer();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(new WorthWords(worth).reasons()));
        blocks.add(options(rows));
        plans(rows).ifPresent(blocks::add);
        if (!answer.flips().isEmpty()) {
            blocks.add(flips(rows));
        }
        if (!answer.tests().isEmpty()) {
            blocks.add(tests(rows));
        }
        blocks.add(said(worth, answer.problem().owner()));
        judgements(worth).ifPresent(blocks::add);
        remarks(worth, answer).ifPresent(blocks::add);
        if (!worth.done().isEmpty()) {
            blocks.add(done(worth));
        }
        if (!appraisal.session().money().spent().isEmpty()) {
            blocks.add(spent(appraisal.session().money().spent()));
        }
        return blocks;
    }

    private static Section negotiation(AnswerRows rows, PurchaseAnswer purchase) {
        List<ReportModel.Item> items = new ArrayList<>();
        items.add(new ReportModel.Item(
                "highestPrice",
                "Pay no more than",
                rows.money(purchase.rounded()) + " (± " + rows.money(purchase.noise()) + ")"));
        purchase.asked().ifPresent(asked -> items.add(new ReportModel.Item("asked", "Asked", rows.money(asked))));
        purchase.least()
                .ifPresent(least ->
                        items.add(new ReportModel.Item("least", "The seller takes at least", rows.money(least))));
        List<Block> blocks = new ArrayList<>(List.of(new Block.Items(items)));
        List<String> findings = purchase.findings().stream().map(rows::finding).toList();
        if (!findings.isEmpty()) {
            blocks.add(new Block.Points("findings", "Findings to put on the table", findings, false));
        }
        List<String> after = rows.answer().tests().stream()
                .filter(test -> test.value().value() > 0)
                .flatMap(test ->
                        rows.results(test).stream().map(result -> test.test().name() + ": " + result))
                .toList();
        if (!after.isEmpty()) {
            blocks.add(new Block.Points("afterTests", "What a test would make of the price", after, false));
        }
        return new Section("negotiation", "What to pay", "what the findings take off, judgement", blocks);
    }

    private static Block options(AnswerRows rows) {
        Answer answer = rows.answer();
        MoneyStrip strips = new MoneyStrip(
                answer.options().stream().map(WorthSection::bar).toList(),
                answer.problem()
                        .owner()
                        .budget()
                        .map(budget -> OptionalDouble.of(budget.cap()))
                        .orElse(OptionalDouble.empty()),
                answer.problem().currency(),
                STRIP_WIDTH);
        return new Block.Table(
                "options",
                "Options, best first",
                List.of(
                        Block.Column.sentences("name", "Option"),
                        drawn("cost", "Money, 10 · 50 · 90 of 100", strips.axis(AXIS_HEIGHT)),
                        figures("powerAfter", "Power after"),
                        figures("overBudget", "Over budget of 100"),
                        figures("net", "Better off by"),
                        words("ends", "10 to 90 of 100"),
                        Block.Column.under("detail", "")),
                answer.options().stream().map(row -> row(rows, row, strips)).toList());
    }

    private static MoneyStrip.Bar bar(OptionAnswer row) {
        return new MoneyStrip.Bar(
                row.name(), row.cost().p10(), row.cost().p50(), row.cost().p90());
    }

    private static List<Cell> row(AnswerRows rows, OptionAnswer row, MoneyStrip strips) {
        return List.of(
                Cell.words(row.name()),
                Cell.words(rows.cost(row)).drawn(strips.strip(bar(row), STRIP_HEIGHT)),
                Cell.figure(rows.power(row), row.powerAfterHp()),
                Cell.figure(rows.overBudget(row), row.overBudget()),
                Cell.figure(rows.net(row), row.expected().value()),
                Cell.words(rows.netEnds(row)),
                Cell.words(rows.detail(row)));
    }

    private static Optional<Block> plans(AnswerRows rows) {
        List<String> plans = rows.answer().options().stream()
                .filter(row -> row.allowed()
                        && row.dominatedBy().isEmpty()
                        && !rows.policy(row).isEmpty())
                .map(row -> row.name() + ": " + String.join("; ", rows.policy(row)) + ".")
                .toList();
        return plans.isEmpty()
                ? Optional.empty()
                : Optional.of(new Block.Points("plans", "Where a plan turns", plans, false));
    }

    private static Block flips(AnswerRows rows) {
        return new Block.Table(
                "flips",
                "What would flip it",
                List.of(
                        words("input", "Input"),
                        figures("now", "Now"),
                        figures("at", "From"),
                        words("becomes", "Then best")),
                rows.answer().flips().stream()
                        .map(flip -> List.of(
                                Cell.words(rows.input(flip)),
                                Cell.figure(rows.value(flip, flip.now()), flip.now()),
                                Cell.figure(rows.value(flip, flip.at()), flip.at()),
                                Cell.words(flip.becomes())))
                        .toList());
    }

    private static Block tests(AnswerRows rows) {
        return new Block.Table(
                "tests",
                "Tests before deciding",
                List.of(
                        words("test", "Test"),
                        figures("minutes", "Takes"),
                        figures("cost", "Costs"),
                        figures("value", "Is worth"),
                        Block.Column.sentences("verdict", "Verdict")),
                rows.answer().tests().stream().map(test -> test(rows, test)).toList());
    }

    private static List<Cell> test(AnswerRows rows, TestAnswer test) {
        return List.of(
                Cell.words(test.test().name()),
                Cell.figure(rows.minutes(test), test.test().minutes()),
                Cell.figure(rows.money(test.cost()), test.cost()),
                Cell.figure(rows.money(test.value().value()), test.value().value()),
                Cell.words(rows.verdict(test)));
    }

    private Block said(WorthFindings worth, OwnerInputs owner) {
        String currency = worth.currency();
        List<ReportModel.Item> items = new ArrayList<>(toldBesides());
        items.addAll(List.of(
                new ReportModel.Item("worthSound", "Worth if sound", Figures.money(owner.worthSound(), currency)),
                new ReportModel.Item("valuePerHp", "One hp is worth", Figures.money(owner.valuePerHp(), currency)),
                new ReportModel.Item("hourPrice", "An own hour", Figures.money(owner.hourPrice(), currency)),
                new ReportModel.Item("months", "Kept", Figures.number(owner.monthsKept(), 0) + " months"),
                new ReportModel.Item("weekWithout", "A week without it", Figures.money(owner.weekWithout(), currency)),
                new ReportModel.Item("hardPulls", "Hard pulls", owner.hardPulls() ? "yes" : "no"),
                new ReportModel.Item("spent", "Spent, not counted", Figures.money(worth.spent()))));
        owner.budget()
                .ifPresent(budget ->
                        items.add(new ReportModel.Item("budget", "Budget", Figures.money(budget.cap(), currency))));
        return new Block.Items(items);
    }

    private static Optional<Block> judgements(WorthFindings worth) {
        List<String> own = worth.weighing().catalogue().numbers().all().stream()
                .filter(JudgedNumber::own)
                .map(JudgedNumber::sentence)
                .toList();
        return own.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Block.Points("judgements", "Numbers the owner has put in place of the usual", own, false));
    }

    private static Optional<Block> remarks(WorthFindings worth, Answer answer) {
        List<String> remarks =
                new ArrayList<>(answer.remarks().stream().map(Remark::words).toList());
        remarks.addAll(worth.remarks());
        remarks.add("Costs and chances are judgement unless measured or entered; all can be edited and reset.");
        return Optional.of(new Block.Points("remarks", "To bear in mind", remarks, false));
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
