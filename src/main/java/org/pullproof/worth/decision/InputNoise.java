package org.pullproof.worth.decision;

import java.util.LinkedHashMap;
import java.util.Map;
import org.pullproof.worth.decision.answer.Input;
import org.pullproof.worth.decision.answer.Input.Common;

/**
 * What the difference of two options would change if each main input but the price were a fifth higher (the worth of the car a
 * tenth): the same 500 draws, both options kept whether allowed or not, the choices inside them made anew. JudgedNumber (worth.md 2).
 *
 * @param parts the change by each input
 */
record InputNoise(Map<Input, Double> parts) {

    static InputNoise between(int option, int other, Reruns reruns) {
        Weighed base = reruns.few();
        double now = base.worth(option) - base.worth(other);
        Map<Input, Double> parts = new LinkedHashMap<>();
        for (Input input : Inputs.of(base.problem())) {
            if (input != Common.PRICE) {
                Weighed raised = base.moved(Inputs.raised(base.scenario(), input));
                parts.put(input, raised.worth(option) - raised.worth(other) - now);
            }
        }
        return new InputNoise(parts);
    }

    /** The root of the sum of squares. */
    double total() {
        return Math.sqrt(
                parts.values().stream().mapToDouble(part -> part * part).sum());
    }
}
