package org.pullproof.advice;

import java.util.List;
import java.util.Optional;
import org.pullproof.car.Access;
import org.pullproof.car.Fact;
import org.pullproof.health.HealthFindings.CylinderFindings;
import org.pullproof.health.HealthFindings.Verdict;

/** The end of a visit before purchase: ask for more where it would settle something, else hold findings beside the price. */
final class PurchaseRules {
    private final Proposals proposals;

    PurchaseRules(Proposals proposals) {
        this.proposals = proposals;
    }

    List<Rule> inOrder() {
        return List.of(this::askForPlugs, this::price, this::decide);
    }

    private Optional<NextStep> askForPlugs(Situation now) {
        String why = now.suspects().stream()
                .map(CylinderFindings::number)
                .findFirst()
                .map(number -> "Cylinder " + number + " is in doubt, and with the plugs in nobody can say why.")
                .orElse("What the starter and the running engine tell is read; compression is the next proof.");
        return now.permits(Access.PLUGS_OUT) || now.health().verdict() == Verdict.NOT_SOUND
                ? Optional.empty()
                : Optional.of(proposals.desk(
                        Stage.CAR,
                        "Ask for leave to take the plugs out",
                        why,
                        "Whether every cylinder seals. If the seller says no, that is a finding too."));
    }

    private Optional<NextStep> price(Situation now) {
        return now.owned() || now.car().told(Fact.PRICE).isPresent()
                ? Optional.empty()
                : Optional.of(proposals.desk(
                        Stage.CAR,
                        "Say what is asked for it",
                        "What may be read before purchase is read.",
                        "Findings can be held against a price only when there is one."));
    }

    private Optional<NextStep> decide(Situation now) {
        return now.owned()
                ? Optional.empty()
                : Optional.of(proposals.desk(
                        Stage.WORTH_IT,
                        "Hold the findings beside the price",
                        "What the owner permits is done: "
                                + verdict(now.health().verdict()) + ".",
                        "Whether to buy, to offer less or to walk away."));
    }

    private static String verdict(Verdict verdict) {
        return switch (verdict) {
            case SOUND -> "it reads sound";
            case NOT_SOUND -> "it is not sound";
            case NOT_SETTLED -> "whether it is sound is not settled";
        };
    }
}
