package org.pullproof.worth.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pullproof.worth.decision.answer.Flip;
import org.pullproof.worth.decision.answer.Input;
import org.pullproof.worth.decision.money.Scenario;

/**
 * Where another option becomes best: from the value now outwards in growing steps, x0 + (end − x0)(k/8)², and from the first step
 * with another best halved back.
 */
final class Flips {
    private static final int STEPS = 8;
    private static final int HALVINGS = 18;

    private final Weighed answer;
    private final Reruns reruns;

    Flips(Weighed answer, Reruns reruns) {
        this.answer = answer;
        this.reruns = reruns;
    }

    /** The nearest flips of an input, downwards and upwards. */
    List<Flip> of(Input input) {
        double now = answer.scenario().value(input);
        Inputs.Range range = Inputs.range(input, now);
        List<Flip> flips = new ArrayList<>();
        if (range.low() < now) {
            towards(range.low(), input).ifPresent(flips::add);
        }
        if (range.high() > now) {
            towards(range.high(), input).ifPresent(flips::add);
        }
        return flips;
    }

    private Optional<Flip> towards(double end, Input input) {
        Weighed base = Inputs.keepsDraws(input) ? answer : reruns.agreeing();
        double now = base.scenario().value(input);
        int best = base.best().option();
        double inside = now;
        for (int k = 1; k <= STEPS; k++) {
            double outside = now + (end - now) * k * k / (STEPS * STEPS);
            if (best(base, input, outside) != best) {
                return Optional.of(between(base, input, inside, outside, best));
            }
            inside = outside;
        }
        return Optional.empty();
    }

    private Flip between(Weighed base, Input input, double from, double to, int best) {
        double inside = from;
        double outside = to;
        for (int k = 0; k < HALVINGS; k++) {
            double middle = (inside + outside) / 2;
            if (best(base, input, middle) == best) {
                inside = middle;
            } else {
                outside = middle;
            }
        }
        String becomes = base.option(best(base, input, outside)).name();
        return new Flip(input, base.scenario().value(input), outside, becomes);
    }

    private static int best(Weighed base, Input input, double value) {
        Scenario moved = base.scenario().with(input, value);
        Weighed then = input instanceof Input.Chance ? base.believing(moved) : base.moved(moved);
        return then.best().option();
    }
}
