package org.pullproof.worth.decision;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.pullproof.units.Figures;
import org.pullproof.worth.decision.answer.Flip;
import org.pullproof.worth.decision.answer.Input.Common;
import org.pullproof.worth.decision.answer.OptionAnswer;
import org.pullproof.worth.decision.answer.Remark;
import org.pullproof.worth.decision.answer.Remark.Kind;
import org.pullproof.worth.decision.problem.FaultMoney;
import org.pullproof.worth.decision.problem.OwnerInputs;
import org.pullproof.worth.decision.problem.Problem;
import org.pullproof.worth.decision.problem.Purchase;

/** Where a question would be foolish, said in a sentence (worth.md 5). */
final class Remarks {
    /** Above it the owner is asked again (judgement). */
    private static final double SENSIBLE_VALUE_PER_HP = 60;

    /** W above so many times the asked price is asked again (judgement). */
    private static final double SENSIBLE_WORTH = 3;

    /** A gain below this share of the power is none (judgement). */
    private static final double NO_GAIN = 0.001;

    private static final double CERTAIN = 1 - 1e-9;

    private final Problem problem;
    private final List<OptionAnswer> rows;
    private final List<Flip> flips;
    private final List<Remark> remarks = new ArrayList<>();

    Remarks(Problem problem, List<OptionAnswer> rows, List<Flip> flips) {
        this.problem = problem;
        this.rows = rows;
        this.flips = flips;
    }

    List<Remark> all() {
        gains();
        owner();
        budget();
        worth();
        problem.faults().values().forEach(this::discount);
        power();
        return List.copyOf(remarks);
    }

    private void add(Kind kind, String words) {
        remarks.add(new Remark(kind, words));
    }

    private String money(double sum) {
        return Figures.money(sum, problem.currency());
    }

    private void gains() {
        double now = problem.power().hp();
        if (rows.stream().allMatch(row -> row.powerAfterHp() - now < NO_GAIN * now)) {
            add(Kind.NO_GAIN_EXPECTED, "No gain is expected from this list.");
        }
        if (!problem.tests().isEmpty() && problem.states().stream().anyMatch(state -> state.chance() >= CERTAIN)) {
            add(
                    Kind.STATE_CERTAIN,
                    "The readings leave one state of the engine only, so no test can change the answer; one of them would have to be"
                            + " wrong.");
        }
    }

    private void owner() {
        double perHp = problem.owner().valuePerHp();
        if (perHp > SENSIBLE_VALUE_PER_HP) {
            String below = flip(Common.VALUE_PER_HP)
                    .map(flip -> "; below " + money(flip.at()) + " it is \"" + flip.becomes() + "\"")
                    .orElse("");
            add(
                    Kind.VALUE_PER_HP_HIGH,
                    "One hp is said to be worth " + money(perHp) + ", more than most would pay: check it" + below
                            + ".");
        }
        if (problem.owner().hourPrice() == 0 && rows.stream().anyMatch(row -> row.hours() > 0)) {
            String from = flip(Common.HOUR_PRICE)
                    .map(flip -> "; from " + money(flip.at()) + " an hour it is \"" + flip.becomes() + "\"")
                    .orElse("");
            add(Kind.HOURS_FREE, "Own hours are said to cost nothing: look at the hours of each row" + from + ".");
        }
    }

    private Optional<Flip> flip(Common input) {
        return flips.stream().filter(flip -> flip.input() == input).findFirst();
    }

    private void budget() {
        boolean capped = problem.owner().budget().isPresent();
        boolean nothing =
                rows.stream().allMatch(row -> !row.allowed() || row.cost().p90() <= 0);
        if (capped && nothing) {
            rows.stream()
                    .filter(row -> !row.allowed())
                    .min(Comparator.comparingDouble(row -> row.cost().p90()))
                    .ifPresent(row -> add(
                            Kind.NOTHING_FITS_BUDGET,
                            "Nothing that costs money fits the budget; \"" + row.name()
                                    + "\" would fit nine times in ten with "
                                    + money(row.cost().p90()) + "."));
        }
        rows.stream()
                .filter(OptionAnswer::budgetEdge)
                .forEach(row -> add(Kind.ON_THE_EDGE, "\"" + row.name() + "\" is on the edge of the budget."));
    }

    private void worth() {
        OwnerInputs owner = problem.owner();
        if (owner.worthAssumed()) {
            add(
                    Kind.WORTH_DOUBTFUL,
                    "What the car is worth with a sound engine is not answered; " + stand(owner)
                            + " stands for it until it is.");
        }
        if (owner.partsValue() >= owner.worthSound()) {
            add(
                    Kind.WORTH_DOUBTFUL,
                    "The car is said to be worth no more whole than in parts: check both, or break it for parts.");
        }
        owner.purchase()
                .flatMap(Purchase::asked)
                .filter(price -> owner.worthSound() > SENSIBLE_WORTH * price)
                .ifPresent(price -> add(
                        Kind.WORTH_DOUBTFUL,
                        "The car is said to be worth " + money(owner.worthSound()) + " at an asked price of "
                                + money(price) + ": check both."));
    }

    private String stand(OwnerInputs owner) {
        boolean asked = owner.purchase().flatMap(Purchase::asked).isPresent();
        return asked ? "the asked price" : money(owner.worthSound());
    }

    private void discount(FaultMoney fault) {
        fault.cureCost()
                .filter(cure -> fault.discount() < cure)
                .ifPresent(cure -> add(
                        Kind.DISCOUNT_BELOW_CURE,
                        "A buyer who knows would take off more than " + money(fault.discount()) + " for "
                                + fault.words() + ": its cure costs about " + money(cure) + "."));
    }

    private void power() {
        if (problem.power().estimated()) {
            add(
                    Kind.POWER_ESTIMATED,
                    "The power now is not measured but taken from the displacement, and gains are percent of it.");
        }
        problem.power()
                .elevationMetres()
                .ifPresent(metres -> add(
                        Kind.HIGH_UP,
                        "Gains are in corrected hp; at " + Figures.number(metres, 0) + Figures.NO_BREAK_SPACE
                                + "m fewer are felt."));
    }
}
