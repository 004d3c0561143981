package org.pullproof.worth.decision.words;

import java.util.Comparator;
import java.util.Optional;
import org.pullproof.units.Figures;
import org.pullproof.worth.decision.answer.Answer;
import org.pullproof.worth.decision.answer.Lead;
import org.pullproof.worth.decision.answer.OptionAnswer;
import org.pullproof.worth.decision.answer.PurchaseAnswer;
import org.pullproof.worth.decision.problem.Ending;
import org.pullproof.worth.decision.problem.Node.End;
import org.pullproof.worth.decision.problem.Option;

/** Part 1: what to do now, by call. */
final class ActWords {
    private final Answer answer;
    private final Rounded rounded;
    private final OptionAnswer best;

    ActWords(Answer answer) {
        this.answer = answer;
        this.rounded = new Rounded(answer.problem().currency());
        this.best = answer.best();
    }

    String sentence() {
        Optional<PurchaseAnswer> unpriced =
                answer.purchase().filter(purchase -> purchase.asked().isEmpty());
        if (unpriced.isPresent()) {
            return "Pay at most " + highest(unpriced.get()) + leastClause(unpriced.get()) + ".";
        }
        return switch (answer.call()) {
            case CLEAR -> clear();
            case TOO_CLOSE -> tooClose(answer.lead().orElseThrow());
            case WALK_AWAY -> walkAway();
            case STOP_SPENDING -> stop();
        };
    }

    private String clear() {
        String ahead = isReference(best)
                ? "nothing else on the list is better"
                : "about " + rounded.sum(best.expected().value(), answer.noise()) + " better than \""
                        + answer.problem().reference().name() + "\"";
        String second = answer.lead()
                .filter(lead -> !isReference(answer.option(lead.over())))
                .map(lead -> ", and \"" + lead.over() + "\" is about "
                        + rounded.sum(lead.by().value(), lead.noise()) + " behind")
                .orElse("");
        return Names.bold(Names.capital(act(best))) + plan(best) + ": " + ahead + second
                + answer.purchase().map(this::offer).orElse("") + sameAct() + ".";
    }

    private String tooClose(Lead lead) {
        OptionAnswer other = answer.option(lead.over());
        String difference = "is about " + rounded.sum(lead.by().value(), lead.noise()) + " ahead of "
                + Names.bold(act(other)) + ", less than the noise of about " + rounded.sum(lead.settledBy());
        return "Too close to call" + priceClause() + ": " + Names.bold(act(best)) + plan(best) + " " + difference
                + answer.purchase().map(this::offer).orElseGet(() -> reversible(other)) + sameAct() + ".";
    }

    private String priceClause() {
        return answer.purchase()
                .flatMap(PurchaseAnswer::asked)
                .map(price -> " at " + rounded.typed(price))
                .orElse("");
    }

    /** Which of the two keeps the other possible: it goes first. */
    private String reversible(OptionAnswer other) {
        Comparator<OptionAnswer> order = Comparator.comparingInt((OptionAnswer row) -> commits(row.option()))
                .thenComparingDouble(row -> row.cost().p50());
        boolean bestFirst = order.compare(best, other) <= 0;
        String first = act(bestFirst ? best : other);
        String later = act(bestFirst ? other : best);
        return "; \"" + first + "\" leaves \"" + later + "\" possible, so it goes first";
    }

    /** How much an option commits to at its first act: nothing done can still be done, a car sold is gone. */
    private static int commits(Option option) {
        if (option.tree() instanceof End end) {
            return end.ending() == Ending.SELL || end.ending() == Ending.PARTS ? 2 : 0;
        }
        return 1;
    }

    private String walkAway() {
        String why =
                answer.purchase().map(this::worthToYou).orElse("no way of buying it that fits the budget is better");
        return Names.bold("Walk away") + ": " + why + ".";
    }

    private String worthToYou(PurchaseAnswer purchase) {
        String asked = purchase.asked()
                .map(price -> ", against " + rounded.typed(price) + " asked")
                .orElse("");
        return "the car is worth at most " + highest(purchase) + " to you" + asked + offer(purchase);
    }

    private String highest(PurchaseAnswer purchase) {
        return "about " + rounded.typed(Math.max(0, purchase.rounded())) + " (±" + Figures.NO_BREAK_SPACE
                + rounded.sum(purchase.noise()) + ")";
    }

    /** The offer that would change it: below X*; with a least price of the seller between the two, if there is room. */
    private String offer(PurchaseAnswer purchase) {
        String highest = rounded.typed(Math.max(0, purchase.rounded()));
        if (purchase.least().isPresent()) {
            return purchase.least().get() < purchase.highest().value()
                    ? "; offer between " + rounded.typed(purchase.least().get()) + " and " + highest + ", and no more"
                    : "; the seller takes no less than "
                            + rounded.typed(purchase.least().get());
        }
        return "; offer at most " + highest;
    }

    private String leastClause(PurchaseAnswer purchase) {
        return purchase.least().isPresent() ? offer(purchase) : "";
    }

    private String stop() {
        if (isReference(best)) {
            return Names.bold("Stop spending") + ": nothing on the list pays.";
        }
        return Names.bold("Stop spending") + ": nothing on the list that costs more pays; " + Names.bold(best.name())
                + " takes about " + rounded.sum(best.cost().p50()) + " and " + Figures.number(best.hours(), 1)
                + Figures.NO_BREAK_SPACE + "h and is worth about "
                + rounded.sum(best.expected().value(), answer.noise()) + ".";
    }

    /** Options that begin with the same act need not be told apart now. */
    private String sameAct() {
        return answer.options().stream()
                .filter(row -> row.allowed() && !row.name().equals(best.name()) && act(row).equals(act(best)))
                .findFirst()
                .map(row -> "; \"" + row.name() + "\" begins with the same act, so that choice (about "
                        + rounded.sum(best.expected().value() - row.expected().value()) + " less) comes later")
                .orElse("");
    }

    private static String act(OptionAnswer row) {
        return row.option().firstAct();
    }

    private static String plan(OptionAnswer row) {
        return act(row).equals(row.name()) ? "" : " (\"" + row.name() + "\")";
    }

    private boolean isReference(OptionAnswer row) {
        return row.option().role() == Option.Role.REFERENCE;
    }
}
