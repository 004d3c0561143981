package org.pullproof.worth.decision.money;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.pullproof.worth.decision.draws.Batches;
import org.pullproof.worth.decision.draws.Streams;
import org.pullproof.worth.decision.problem.Gain;

/**
 * What each end gains in driving, in hp: G = P_now·(max(0, Π(1 + g/100)) − 1), over the gains of the end and what every cured fault
 * gives back.
 */
final class Gains {
    private final GainDraws draws;
    private final double powerNow;
    private final int size;
    private final Map<Gain, double[]> gains = new LinkedHashMap<>();
    private final Map<String, double[]> restored = new HashMap<>();
    private final List<Gained> gained;

    /** Power gained in every draw, and the mean of each batch, hp. */
    static final class Gained {
        final double[] hp;
        final double[] mean;

        private Gained(double[] hp) {
            this.hp = hp;
            this.mean = Batches.means(hp);
        }
    }

    Gains(Layout layout, Scenario scenario, Streams streams) {
        draws = new GainDraws(scenario, streams);
        powerNow = scenario.problem().power().hp();
        size = streams.size();
        gained = layout.gains().stream().map(this::gained).toList();
    }

    Gained get(int plan) {
        return gained.get(plan);
    }

    /** Each gain in percent, by its name. */
    Map<String, double[]> byName() {
        Map<String, double[]> byName = new LinkedHashMap<>();
        gains.forEach((gain, percent) -> byName.putIfAbsent(gain.name(), percent));
        return byName;
    }

    private Gained gained(GainPlan plan) {
        double[] product = new double[size];
        Arrays.fill(product, 1);
        plan.gains().forEach(gain -> multiply(product, gains.computeIfAbsent(gain, draws::of)));
        plan.cured().forEach(fault -> multiply(product, restored.computeIfAbsent(fault, draws::restored)));
        for (int i = 0; i < size; i++) {
            product[i] = powerNow * (Math.max(0, product[i]) - 1);
        }
        return new Gained(product);
    }

    private static void multiply(double[] product, double[] percent) {
        for (int i = 0; i < product.length; i++) {
            product[i] *= 1 + percent[i] / 100;
        }
    }
}
