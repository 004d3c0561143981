package org.pullproof.worth;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pullproof.units.Figures;
import org.pullproof.units.Power;
import org.pullproof.units.Shown;
import org.pullproof.worth.decision.answer.Answer;
import org.pullproof.worth.decision.answer.Flip;
import org.pullproof.worth.decision.answer.Input;
import org.pullproof.worth.decision.answer.OptionAnswer;
import org.pullproof.worth.decision.answer.PolicyStep;
import org.pullproof.worth.decision.answer.PurchaseAnswer;
import org.pullproof.worth.decision.answer.Spread;
import org.pullproof.worth.decision.answer.TestAnswer;

/**
 * The figures of an answer in words, so that the sheet, the command line and the report say the same of each row.
 *
 * @param answer what is told
 * @param figures how power is written
 */
public record AnswerRows(Answer answer, Figures figures) {
    private static final int HUNDRED = 100;

    /** Chances below this are not worth telling. */
    private static final double LIKELY_ENOUGH = 0.005;

    public String money(double sum) {
        return Figures.money(rounded(sum), answer.problem().currency());
    }

    /** No sum is told finer than a whole unit, a large one not finer than its noise allows. */
    private static double rounded(double sum) {
        double step = Math.abs(sum) >= 1000 ? 10 : 1;
        return Math.rint(sum / step) * step;
    }

    /** "$90 · $180 · $420"; one figure where all three are the same. */
    public String cost(OptionAnswer row) {
        Spread cost = row.cost();
        return cost.p10() == cost.p90()
                ? money(cost.p50())
                : money(cost.p10()) + " · " + money(cost.p50()) + " · " + money(cost.p90());
    }

    /** What the owner is better off by, on average; the reference is the measure. */
    public String net(OptionAnswer row) {
        return money(row.expected().value());
    }

    /** "−$110 to $290", or that it is the measure of all others. */
    public String netEnds(OptionAnswer row) {
        return isReference(row)
                ? "the measure"
                : money(row.net().p10()) + " to " + money(row.net().p90());
    }

    public boolean isReference(OptionAnswer row) {
        return row.name().equals(answer.problem().reference().name());
    }

    /** Band power afterwards; nothing where the car goes or stands. */
    public String power(OptionAnswer row) {
        return row.failure12() > 0
                ? figures.of(Power.ofHorsepower(row.powerAfterHp()).kilowatt() * 1e3, Shown.POWER)
                : "–";
    }

    /** "22", times in a hundred over the budget; nothing without one. */
    public String overBudget(OptionAnswer row) {
        return answer.problem().owner().budget().isPresent() ? ofHundred(row.overBudget()) : "–";
    }

    private static String ofHundred(double chance) {
        return Figures.number(HUNDRED * chance, 0);
    }

    /** What stands below the name of an option: hours, and why it is greyed or out. */
    public String detail(OptionAnswer row) {
        List<String> words = new ArrayList<>();
        if (row.hours() >= 0.5) {
            words.add(counted(row.hours(), "own hour"));
        }
        if (row.weeks() >= 0.5) {
            words.add(counted(row.weeks(), "week") + " without the car");
        }
        if (!row.alike().isEmpty()) {
            words.add("the same as " + String.join(", ", row.alike()));
        }
        reason(row).ifPresent(words::add);
        return String.join(", ", words);
    }

    private static String counted(double count, String thing) {
        String shown = Figures.number(count, 0);
        return shown + Figures.NO_BREAK_SPACE + thing + (shown.equals("1") ? "" : "s");
    }

    /** Why an option is out or dominated. */
    public Optional<String> reason(OptionAnswer row) {
        if (!row.allowed()) {
            return Optional.of("out of the budget");
        }
        return row.dominatedBy().isEmpty()
                ? Optional.empty()
                : Optional.of("never better than " + row.dominatedBy().get(0));
    }

    /** What a plan picks where it comes to a choice: "if cracked: sell as it stands". */
    public List<String> policy(OptionAnswer row) {
        return row.policy().stream()
                .filter(step -> step.chance() >= LIKELY_ENOUGH)
                .map(AnswerRows::step)
                .toList();
    }

    private static String step(PolicyStep step) {
        return step.seen().isEmpty()
                ? step.choice()
                : "if " + String.join(", then ", step.seen()) + ": " + step.choice();
    }

    /** What an input is called: "A horsepower is worth". */
    public String input(Flip flip) {
        if (flip.input() instanceof Input.Chance chance) {
            return "Chance of " + faultWords(chance.fault());
        }
        return switch ((Input.Common) flip.input()) {
            case VALUE_PER_HP -> "One hp is worth";
            case HOUR_PRICE -> "An own hour counts as";
            case WORTH_SOUND -> "Worth if the engine were sound";
            case MONTHS_KEPT -> "Months the car is kept";
            case WEEK_WITHOUT -> "A week without the car";
            case RESALE_SHARE -> "Engine money that a buyer pays back";
            case PRICE -> "Price";
            case REPAIR_OVERRUN -> "Repairs run over";
            case REBUILD_OVERRUN -> "Rebuilds run over";
            case HOURS_OVERRUN -> "Own hours run over";
            case GAINS -> "Gains turn out";
            case HAZARDS -> "Failures come";
            case DISCOUNTS -> "What a buyer takes off for faults";
        };
    }

    private String faultWords(String fault) {
        return Optional.ofNullable(answer.problem().faults().get(fault))
                .map(money -> money.words())
                .orElse(fault);
    }

    /** A value of an input in the owner's unit: "$60", "36 months", "31 %", "1.2 times as thought". */
    public String value(Flip flip, double value) {
        if (flip.input() instanceof Input.Chance) {
            return Figures.percent(HUNDRED * value, 0);
        }
        return switch ((Input.Common) flip.input()) {
            case VALUE_PER_HP, HOUR_PRICE, WORTH_SOUND, WEEK_WITHOUT, PRICE -> money(value);
            case MONTHS_KEPT -> Figures.number(value, 0) + " months";
            case RESALE_SHARE -> Figures.percent(HUNDRED * value, 0);
            case REPAIR_OVERRUN, REBUILD_OVERRUN, HOURS_OVERRUN, GAINS, HAZARDS, DISCOUNTS ->
                value == 1 ? "as thought" : Figures.number(value, value < 1 ? 2 : 1) + " times";
        };
    }

    /** "25 min". */
    public String minutes(TestAnswer test) {
        return Figures.number(test.test().minutes(), 0) + Figures.NO_BREAK_SPACE + "min";
    }

    /** What to think of a test, in words. */
    public String verdict(TestAnswer test) {
        return switch (test.verdict()) {
            case WORTH_NOTHING -> "no result changes the choice";
            case NOT_ITS_PRICE -> "costs more than it is worth";
            case HARDLY_MATTERS -> "hardly matters";
            case WORTH_DOING_FIRST -> "worth doing first";
        };
    }

    /** What each result of a test means: "burnt edge (49 in 100): head at once". */
    public List<String> results(TestAnswer test) {
        return test.results().stream()
                .map(result -> result.name() + " (" + ofHundred(result.chance()) + " in 100): " + result.best()
                        + result.highestPrice()
                                .map(price -> ", highest price " + money(price))
                                .orElse(""))
                .toList();
    }

    /** A line of the negotiation: "a worn bore or piston takes off $310". */
    public String finding(PurchaseAnswer.Finding finding) {
        return faultWords(finding.fault()) + " takes off " + money(finding.takesOff());
    }

    /** A line of the negotiation by the fault alone, for a table. */
    public String fault(String key) {
        String words = faultWords(key);
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
