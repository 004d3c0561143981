package org.pullproof.ui.worth;

import java.time.Clock;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.pullproof.advice.Stage;
import org.pullproof.app.BackgroundRunner;
import org.pullproof.car.Fact;
import org.pullproof.drawing.MoneyStrip;
import org.pullproof.ui.parts.CopiedRow;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.units.Figures;
import org.pullproof.units.Money;
import org.pullproof.units.Sentence;
import org.pullproof.worth.AnswerRows;
import org.pullproof.worth.Option;
import org.pullproof.worth.Spending;
import org.pullproof.worth.WorthFindings;
import org.pullproof.worth.decision.answer.Answer;
import org.pullproof.worth.decision.answer.OptionAnswer;
import org.pullproof.worth.decision.words.DecisionWords;
import org.pullproof.worth.decision.words.Part;
import org.pullproof.worth.trade.JudgedNumber;

/** State and decisions of the sheet Worth it: options, what is spent, what changes have cost. */
public final class WorthViewModel {
    private static final Set<Part.Kind> HEAD = EnumSet.of(Part.Kind.GATE, Part.Kind.ACT);

    private final SessionViewModel model;
    private final MoneyActs acts;
    private final BackgroundRunner weigher;
    private final Clock clock;
    private final ReadOnlyObjectWrapper<Optional<Weighed>> weighed = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyBooleanWrapper weighing = new ReadOnlyBooleanWrapper();
    private final AtomicLong question = new AtomicLong();

    /**
     * What was weighed.
     *
     * @param findings what it was weighed for
     */
    public record Weighed(WorthFindings findings, Answer answer) {
        /** What to do, for the head of the sheet. */
        public Sentence head() {
            return said(part -> HEAD.contains(part.kind()));
        }

        /** Why, what would turn it, what to find out, what is not counted. */
        public Sentence rest() {
            return said(part -> !HEAD.contains(part.kind()));
        }

        private Sentence said(Predicate<Part> which) {
            return new Sentence(new DecisionWords(answer)
                    .parts().stream()
                            .filter(which)
                            .map(part -> part.sentence().marked())
                            .collect(Collectors.joining(" ")));
        }
    }

    /**
     * @param weigher weighs the options away from the screen, and apart from the work that writes sessions
     */
    public WorthViewModel(SessionViewModel model, MoneyActs acts, BackgroundRunner weigher, Clock clock) {
        this.model = model;
        this.acts = acts;
        this.weigher = weigher;
        this.clock = clock;
        model.appraisalProperty().addListener((of, before, after) -> weigh());
        model.stageProperty().addListener((of, before, after) -> weigh());
        weigh();
    }

    /** Weighs what stands now, but only while somebody looks at this sheet. The last answer stays until the new one is there. */
    private void weigh() {
        if (model.stageProperty().get() != Stage.WORTH_IT) {
            return;
        }
        WorthFindings asked = findings();
        long number = question.incrementAndGet();
        if (asked.tooEarly()) {
            weighing.set(false);
            weighed.set(Optional.empty());
            return;
        }
        weighing.set(true);
        weigher.run(() -> weigh(asked, number), answer -> show(answer, number), failure -> failed(failure, number));
    }

    private Weighed weigh(WorthFindings asked, long number) {
        return new Weighed(asked, asked.weighing().answer(share -> stopIfOvertaken(number)));
    }

    private void stopIfOvertaken(long number) {
        if (number != question.get()) {
            throw new CancellationException("A newer question was asked.");
        }
    }

    private void show(Weighed answer, long number) {
        if (number == question.get()) {
            weighing.set(false);
            weighed.set(Optional.of(answer));
        }
    }

    private void failed(Exception failure, long number) {
        if (number == question.get()) {
            weighing.set(false);
            model.say("The options could not be weighed: " + failure.getMessage());
        }
    }

    SessionViewModel model() {
        return model;
    }

    public WorthFindings findings() {
        return model.appraisal().worth();
    }

    /** What was weighed last; nothing before the first time. */
    public ReadOnlyObjectProperty<Optional<Weighed>> weighedProperty() {
        return weighed.getReadOnlyProperty();
    }

    public Optional<Weighed> weighed() {
        return weighed.get();
    }

    /** Whether something newer is being weighed. */
    public ReadOnlyBooleanProperty weighingProperty() {
        return weighing.getReadOnlyProperty();
    }

    /** The answer that stands above the sheet. */
    public Sentence sentence() {
        if (findings().tooEarly()) {
            return findings().sentence();
        }
        return weighed().map(Weighed::head).orElse(new Sentence("Weighing the options."));
    }

    /** Every number behind the answer. */
    public List<JudgedNumber> judgements() {
        return findings().weighing().catalogue().numbers().all();
    }

    /** Puts a number of the owner in the place of the usual one. */
    public void judge(JudgedNumber number, double value, Consumer<String> refused) {
        model.act(acts.judge(number, value), refused);
    }

    /** Puts the usual number back. */
    public void reset(JudgedNumber number) {
        model.act(acts.reset(number));
    }

    /** Puts every usual number back. */
    public void resetAll() {
        model.act(acts.resetAll());
    }

    /** Tells an answer of the owner. */
    public void tell(Fact fact, String text, Consumer<String> refused) {
        model.act(acts.tell(fact, text), refused);
    }

    /** A bare figure of money takes the currency of the sheet. */
    String withCurrency(Fact fact, String text) {
        return fact.kind() == Fact.Kind.MONEY && text.strip().matches("[\\d.,]+")
                ? text.strip() + findings().currency()
                : text;
    }

    /** What the owner is asked here: the price only before purchase. */
    public List<Fact> asked() {
        return model.session().car().beforePurchase()
                ? List.of(
                        Fact.WORTH_SOUND,
                        Fact.PRICE,
                        Fact.LEAST_PRICE,
                        Fact.VALUE_PER_HP,
                        Fact.HOUR_PRICE,
                        Fact.MONTHS,
                        Fact.BUDGET,
                        Fact.WEEK_WITHOUT,
                        Fact.HARD_PULLS)
                : List.of(
                        Fact.WORTH_SOUND,
                        Fact.VALUE_PER_HP,
                        Fact.HOUR_PRICE,
                        Fact.MONTHS,
                        Fact.BUDGET,
                        Fact.WEEK_WITHOUT,
                        Fact.HARD_PULLS,
                        Fact.SPENT);
    }

    /** What counts until a fact is told: "taken as $20, judgement". */
    public String untilTold(Fact fact) {
        String currency = findings().currency();
        return switch (fact) {
            case WORTH_SOUND ->
                "taken as "
                        + model.session()
                                .car()
                                .money(Fact.PRICE)
                                .map(Figures::money)
                                .orElse(usual("owner.worth-sound"));
            case VALUE_PER_HP -> "taken as " + usual("owner.value-per-hp");
            case HOUR_PRICE -> "taken as " + usual("owner.hour-price");
            case WEEK_WITHOUT -> "taken as " + usual("owner.week-without");
            case MONTHS -> "taken as " + Figures.number(number("owner.months"), 0);
            case BUDGET -> "no cap";
            case HARD_PULLS -> "taken as no";
            default -> "not told, as 1400" + currency;
        };
    }

    private double number(String key) {
        return findings().weighing().catalogue().number(key);
    }

    private String usual(String key) {
        return Figures.money(number(key) * number("rate.dollar"), findings().currency());
    }

    /** What is spent, in one line. */
    public String moneyWords() {
        return Figures.money(findings().spent()) + " is spent and does not count.";
    }

    public List<Spending> spent() {
        return model.session().money().spent();
    }

    /** Whether an option stands in the book, so that it can be removed; the program's own stay. */
    public boolean isEntered(Option option) {
        return model.session().money().options().stream().anyMatch(entered -> same(entered, option.name()));
    }

    private static boolean same(Option option, String name) {
        return option.name().equalsIgnoreCase(name);
    }

    public OptionDraft draft(Option option) {
        return OptionDraft.of(option);
    }

    public OptionDraft newDraft() {
        return new OptionDraft(findings().currency());
    }

    /**
     * Keeps an option; it takes the place of the one it was made from.
     *
     * @param before name of the option that was edited, or empty for a new one
     * @throws IllegalArgumentException with a sentence if something is missing or does not go together
     */
    public void keep(OptionDraft draft, String before) {
        model.act(acts.offer(draft.option(), before));
    }

    /** Removes what was entered of an option; one of the program comes back with its own figures. */
    public void remove(Option option) {
        model.act(acts.removeOption(option.name()));
    }

    /**
     * Keeps a spending of today, or in the place of another one.
     *
     * @throws IllegalArgumentException with a sentence if words or amount are missing
     */
    public void spend(String what, Optional<Money> amount, Optional<Spending> before) {
        if (what.isBlank()) {
            throw new IllegalArgumentException("Say what the money went for: \"dyno hour\".");
        }
        Money money = amount.orElseThrow(() ->
                new IllegalArgumentException("Say how much: 160" + findings().currency() + "."));
        LocalDate date = before.map(Spending::date).orElse(LocalDate.now(clock));
        Spending next = new Spending(what.strip(), money, date);
        int place = before.map(spent()::indexOf).orElse(-1);
        model.act(place < 0 ? acts.spend(next) : acts.correct(place, next));
    }

    public void remove(Spending spending) {
        int place = spent().indexOf(spending);
        if (place >= 0) {
            model.act(acts.removeSpending(place));
        }
    }

    /** Reads money; a bare figure takes the currency of the sheet. */
    public Money money(String typed) {
        String text = typed.strip();
        return Money.parse(text.matches("[\\d.,]+") ? text + findings().currency() : text);
    }

    /** The entered option that stands behind a row. */
    public Optional<Option> entered(OptionAnswer row) {
        return model.session().money().options().stream()
                .filter(option -> row.name()
                        .toLowerCase(Locale.ROOT)
                        .endsWith(option.name().toLowerCase(Locale.ROOT)))
                .findFirst();
    }

    /** The options as a table, to be copied. */
    public String table() {
        return weighed().map(this::table).orElse("");
    }

    private String table(Weighed shown) {
        AnswerRows rows = rows(shown);
        return shown.answer().options().stream()
                .map(row -> CopiedRow.of(
                        row.name(),
                        rows.net(row),
                        rows.netEnds(row),
                        rows.cost(row),
                        rows.power(row),
                        rows.overBudget(row),
                        rows.detail(row)))
                .collect(Collectors.joining(
                        "\n",
                        "option\tbetter off by\t10 to 90 of 100\tmoney\tpower after\tover budget of 100\t\n",
                        "\n"));
    }

    /** The words of an answer. */
    public AnswerRows rows(Weighed shown) {
        return new AnswerRows(shown.answer(), model.appraisal().figures());
    }

    /** Strips over one shared axis. */
    public MoneyStrip strips(Answer answer, double width) {
        return new MoneyStrip(
                answer.options().stream().map(WorthViewModel::bar).toList(),
                answer.problem()
                        .owner()
                        .budget()
                        .map(budget -> OptionalDouble.of(budget.cap()))
                        .orElse(OptionalDouble.empty()),
                findings().currency(),
                width);
    }

    static MoneyStrip.Bar bar(OptionAnswer row) {
        return new MoneyStrip.Bar(
                row.name(), row.cost().p10(), row.cost().p50(), row.cost().p90());
    }
}
