package org.pullproof.worth.decision.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.pullproof.units.Figures;
import org.pullproof.worth.decision.answer.Answer;
import org.pullproof.worth.decision.answer.Flip;
import org.pullproof.worth.decision.answer.Input;
import org.pullproof.worth.decision.answer.Input.Common;
import org.pullproof.worth.decision.answer.Lead;
import org.pullproof.worth.decision.answer.Remark;

/** Part 3: what would have to be true for the second option, and for the one that is nearest to becoming best. */
final class TurnWords {
    /** What the owner can judge; the others only where none of these turns the answer. */
    private static final Set<Common> OWNERS = EnumSet.of(
            Common.VALUE_PER_HP,
            Common.HOUR_PRICE,
            Common.WORTH_SOUND,
            Common.MONTHS_KEPT,
            Common.WEEK_WITHOUT,
            Common.PRICE);

    /** Outside these a flip is said as "only if" (judgement). */
    private static final double SENSIBLE_VALUE_PER_HP = 60;

    private static final double SENSIBLE_CHANCE = 0.05;
    private static final int EACH = 2;

    private final Answer answer;
    private final Rounded rounded;

    TurnWords(Answer answer) {
        this.answer = answer;
        this.rounded = new Rounded(answer.problem().currency());
    }

    Optional<String> sentence() {
        Optional<String> dear = dear();
        if (dear.isPresent()) {
            return dear;
        }
        List<String> clauses = candidates().stream().map(this::clause).toList();
        return Optional.of(String.join("; ", clauses))
                .filter(words -> !words.isEmpty())
                .map(words -> Names.capital(words) + ".");
    }

    /** Where a hp is said to be worth more than most would pay, that is what the answer turns on. */
    private Optional<String> dear() {
        return answer.flips().stream()
                .filter(flip -> flip.input() == Common.VALUE_PER_HP && flip.at() < flip.now())
                .filter(flip ->
                        answer.remarks().stream().anyMatch(remark -> remark.kind() == Remark.Kind.VALUE_PER_HP_HIGH))
                .findFirst()
                .map(flip -> "Only because one hp is worth " + rounded.typed(flip.now()) + " to you: below "
                        + rounded.price(flip.at()) + " " + Names.bold(flip.becomes()) + " would be best.");
    }

    /** The second option, if anything makes it best, and the one with the nearest flip. */
    private List<String> candidates() {
        List<String> candidates = new ArrayList<>();
        answer.lead()
                .map(Lead::over)
                .filter(second -> flips(second).findAny().isPresent())
                .ifPresent(candidates::add);
        flips().filter(flip -> !candidates.contains(flip.becomes()))
                .findFirst()
                .map(Flip::becomes)
                .ifPresent(candidates::add);
        return candidates;
    }

    /** Nearest first, those that the owner can judge before the others. */
    private Stream<Flip> flips() {
        return answer.flips().stream()
                .sorted(Comparator.comparing((Flip flip) -> !isOwners(flip.input()))
                        .thenComparingDouble(TurnWords::distance));
    }

    private Stream<Flip> flips(String becomes) {
        return flips().filter(flip -> flip.becomes().equals(becomes));
    }

    private static boolean isOwners(Input input) {
        return input instanceof Input.Chance || OWNERS.contains(input);
    }

    /** How far an input has to go, as the logarithm of a ratio: of a chance the ratio of its odds. */
    private static double distance(Flip flip) {
        boolean chance = flip.input() instanceof Input.Chance;
        double now = chance ? flip.now() / (1 - flip.now()) : flip.now();
        double at = chance ? flip.at() / (1 - flip.at()) : flip.at();
        return now > 0 && at > 0 ? Math.abs(Math.log(at / now)) : Double.POSITIVE_INFINITY;
    }

    private String clause(String option) {
        List<Flip> nearest = flips(option).limit(EACH).toList();
        boolean sensible = nearest.stream().anyMatch(TurnWords::isSensible);
        List<String> conditions = nearest.stream().map(this::condition).toList();
        return Names.bold(option) + " would be best " + (sensible ? "if " : "only if ")
                + Names.joined(conditions, "or if");
    }

    private static boolean isSensible(Flip flip) {
        if (flip.input() instanceof Input.Chance) {
            return flip.at() >= SENSIBLE_CHANCE && flip.at() <= 1 - SENSIBLE_CHANCE;
        }
        return flip.input() != Common.VALUE_PER_HP || flip.at() <= SENSIBLE_VALUE_PER_HP;
    }

    private String condition(Flip flip) {
        String side = flip.at() > flip.now() ? "above " : "below ";
        if (flip.input() instanceof Input.Chance chance) {
            String fault = answer.problem().fault(chance.fault()).words();
            return fault + " were " + side + Rounded.percent(flip.at()) + " likely instead of "
                    + Rounded.percent(flip.now());
        }
        return switch ((Common) flip.input()) {
            case VALUE_PER_HP -> "one hp were worth " + prices(flip, side);
            case HOUR_PRICE -> "an own hour were worth " + prices(flip, side);
            case WEEK_WITHOUT -> "a week without the car cost " + prices(flip, side);
            case WORTH_SOUND -> "the car, sound, were worth " + sums(flip, side);
            case PRICE -> "the price were " + sums(flip, side);
            case MONTHS_KEPT ->
                "it were kept " + side + Figures.number(flip.at(), 0) + " months instead of "
                        + Figures.number(flip.now(), 0);
            case RESALE_SHARE ->
                "a buyer paid back " + side + Rounded.percent(flip.at()) + " of engine money instead of "
                        + Rounded.percent(flip.now());
            case REPAIR_OVERRUN -> "repair bills were " + times(flip, side) + "high";
            case REBUILD_OVERRUN -> "rebuild bills were " + times(flip, side) + "high";
            case HOURS_OVERRUN -> "own hours were " + times(flip, side) + "many";
            case GAINS -> "gains were " + times(flip, side) + "large";
            case HAZARDS -> "failures were " + times(flip, side) + "likely";
            case DISCOUNTS -> "what faults take off the price were " + times(flip, side) + "much";
        };
    }

    private String prices(Flip flip, String side) {
        return side + rounded.price(flip.at()) + " instead of " + rounded.typed(flip.now());
    }

    private String sums(Flip flip, String side) {
        return side + rounded.sum(flip.at()) + " instead of " + rounded.typed(flip.now());
    }

    private static String times(Flip flip, String side) {
        return side + Figures.number(flip.at(), 2) + " times as ";
    }
}
