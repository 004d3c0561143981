package org.pullproof.ui.worth;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.pullproof.drawing.MoneyStrip;
import org.pullproof.ui.parts.CopiedRow;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.units.Figures;
import org.pullproof.units.Money;
import org.pullproof.worth.Option;
import org.pullproof.worth.Spending;
import org.pullproof.worth.WorthFindings;
import org.pullproof.worth.WorthFindings.Row;

/** State and decisions of the sheet Worth it: options, what is spent, what changes have cost. */
public final class WorthViewModel {
    private final SessionViewModel model;
    private final MoneyActs acts;
    private final Clock clock;

    public WorthViewModel(SessionViewModel model, MoneyActs acts, Clock clock) {
        this.model = model;
        this.acts = acts;
        this.clock = clock;
    }

    SessionViewModel model() {
        return model;
    }

    public WorthFindings findings() {
        return model.appraisal().worth();
    }

    /** Strips over one shared axis. */
    public MoneyStrip strips(double width) {
        OptionalDouble left = findings()
                .budgetLeft()
                .map(money -> OptionalDouble.of(money.value()))
                .orElse(OptionalDouble.empty());
        return new MoneyStrip(
                findings().options().stream().map(Row::option).toList(),
                left,
                findings().currency(),
                width);
    }

    /** Hours and gain of an option: "45 own hours, gain +1.0 to +3.5 %". */
    public String detail(Row row) {
        List<String> words = new ArrayList<>();
        if (row.option().hours() > 0) {
            words.add(Figures.number(row.option().hours(), 0) + Figures.NO_BREAK_SPACE + "own hours");
        }
        row.option()
                .gain()
                .ifPresent(gain -> words.add("gain " + Figures.signed(gain.lowPercent(), 1) + " to "
                        + Figures.signedPercent(gain.highPercent(), 1)));
        return String.join(", ", words);
    }

    /** The gain in horsepower: "+2.1 · +4.0 · +6.2", or {@code –}. */
    public String gain(Row row) {
        return row.gainHp()
                .map(hp -> Figures.signed(hp.likely(), 1) + Figures.NO_BREAK_SPACE + "hp")
                .orElse("–");
    }

    /** The ends of the gain: "+2.1 to +6.2", or empty. */
    public String gainEnds(Row row) {
        return row.gainHp()
                .filter(hp -> hp.low() < hp.high())
                .map(hp -> Figures.signed(hp.low(), 1) + " to " + Figures.signed(hp.high(), 1))
                .orElse("");
    }

    /** What is spent and what is left, in one line. */
    public String moneyWords() {
        String spent = Figures.money(findings().spent()) + " is spent and does not count.";
        return findings()
                .budgetLeft()
                .map(left -> left.value() < 0
                        ? spent + " The budget is overdrawn by " + Figures.money(-left.value(), left.currency()) + "."
                        : spent + " " + Figures.money(left) + " of the budget is left.")
                .orElse(spent + " No budget is told; the sheet Car asks for it.");
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

    /** The options as a table, to be copied. */
    public String table() {
        return findings().options().stream()
                .map(row -> CopiedRow.of(
                        row.option().name(),
                        row.option().low().toString(),
                        row.option().likely().toString(),
                        row.option().high().toString(),
                        gain(row),
                        row.costPerHp().words(),
                        row.overBudget() ? "over budget" : "",
                        row.option().judgement() ? "judgement" : "entered"))
                .collect(
                        Collectors.joining("\n", "option\tlow\tlikely\thigh\tgain\tcost per hp\tbudget\tfrom\n", "\n"));
    }
}
