package org.pullproof.worth.decision.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.pullproof.units.Figures;
import org.pullproof.worth.decision.answer.Answer;
import org.pullproof.worth.decision.answer.Call;
import org.pullproof.worth.decision.answer.Lead;
import org.pullproof.worth.decision.answer.Parts;
import org.pullproof.worth.decision.answer.PolicyStep;
import org.pullproof.worth.decision.money.GainDraws;
import org.pullproof.worth.decision.problem.Gain;
import org.pullproof.worth.decision.problem.Node;

/** Part 2: why; where a plan turns back; what a measured gain counts as; what the readings take off a price. */
final class WhyWords {
    private static final int LARGEST = 2;
    private static final int LOSSES = 3;

    private final Answer answer;
    private final Rounded rounded;

    WhyWords(Answer answer) {
        this.answer = answer;
        this.rounded = new Rounded(answer.problem().currency());
    }

    /** A part of the net in a sentence. */
    private record Share(String words, double value) {}

    Optional<String> sentence() {
        List<String> clauses = new ArrayList<>();
        if (answer.call() == Call.STOP_SPENDING) {
            losses().ifPresent(clauses::add);
        } else {
            answer.lead().flatMap(this::differences).ifPresent(clauses::add);
        }
        turnBack().ifPresent(clauses::add);
        drawnIn().ifPresent(clauses::add);
        sheet().ifPresent(clauses::add);
        return Optional.of(String.join("; ", clauses))
                .filter(words -> !words.isEmpty())
                .map(words -> Names.capital(words) + ".");
    }

    /** What the dearer options lose, two digits each. */
    private Optional<String> losses() {
        List<String> losses = answer.options().stream()
                .filter(row -> row.cost().p50() > answer.smallestSum()
                        && row.expected().value() < 0)
                .limit(LOSSES)
                .map(row -> "\"" + row.name() + "\" loses about "
                        + rounded.sum(-row.expected().value()) + (row.allowed() ? "" : " and is over the budget"))
                .toList();
        return Optional.of(losses).filter(some -> !some.isEmpty()).map(Names::joined);
    }

    /** The largest two differences between first and second. */
    private Optional<String> differences(Lead lead) {
        Parts more = answer.best().parts().minus(answer.option(lead.over()).parts());
        List<String> largest = List.of(
                        new Share("repair money", more.money()),
                        new Share("own hours", more.hours()),
                        new Share("weeks without the car", more.weeks()),
                        new Share("power", more.power()),
                        car(more),
                        new Share("failure", more.failure()))
                .stream()
                .filter(share -> Math.abs(share.value()) >= 1)
                .sorted(Comparator.comparingDouble((Share share) -> -Math.abs(share.value())))
                .limit(LARGEST)
                .map(share -> share.words() + " counts " + signed(share.value()))
                .toList();
        return Optional.of(largest)
                .filter(some -> !some.isEmpty())
                .map(some -> "against \"" + lead.over() + "\" " + Names.joined(some));
    }

    private static Share car(Parts more) {
        String words = more.price() == 0 ? "the worth of the car" : "the worth of the car less its price";
        return new Share(words, more.car() + more.price());
    }

    private String signed(double value) {
        return (value > 0 ? "+" : "") + rounded.sum(value);
    }

    /** Where a staged plan gives up: "if the head is cracked, sell". */
    private Optional<String> turnBack() {
        return answer.best().policy().stream()
                .filter(step ->
                        step.turnsBack() && step.chance() > 0 && !step.seen().isEmpty())
                .max(Comparator.comparingDouble(PolicyStep::chance))
                .map(step -> "if it turns out \"" + step.seen().get(step.seen().size() - 1) + "\", " + step.choice());
    }

    private Optional<String> drawnIn() {
        double spread = answer.problem().assumptions().changeSpread();
        return measured(answer.best().option().tree())
                .map(gain -> "the measured " + Figures.signedPercent(gain.estimate(), 2) + " of " + gain.name()
                        + " is counted as " + Figures.signedPercent(GainDraws.countedMiddle(gain, spread), 2)
                        + ", as the best of several noisy figures reads high");
    }

    private static Optional<Gain.Measured> measured(Node node) {
        if (node instanceof Node.Do act) {
            return measured(act.then());
        }
        return Optional.of(node)
                .filter(Node.End.class::isInstance)
                .map(Node.End.class::cast)
                .flatMap(end -> end.gains().stream()
                        .filter(Gain.Measured.class::isInstance)
                        .map(Gain.Measured.class::cast)
                        .findFirst());
    }

    /** The negotiation sheet. */
    private Optional<String> sheet() {
        return answer.purchase()
                .map(purchase -> purchase.findings().stream()
                        .map(finding -> rounded.sum(finding.takesOff()) + " ("
                                + answer.problem().fault(finding.fault()).words() + ")")
                        .toList())
                .filter(findings -> !findings.isEmpty())
                .map(findings -> "what may be wrong takes " + Names.joined(findings) + " off the highest price");
    }
}
