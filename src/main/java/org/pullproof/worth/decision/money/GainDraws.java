package org.pullproof.worth.decision.money;

import org.pullproof.worth.decision.answer.Input.Common;
import org.pullproof.worth.decision.draws.Ingredient;
import org.pullproof.worth.decision.draws.Streams;
import org.pullproof.worth.decision.problem.Gain;
import org.pullproof.worth.decision.problem.Normal;

/**
 * Gains of band power in every draw, in percent.
 *
 * <p>A measured gain is drawn in first, because the best of ten noisy figures reads high:
 *
 * <pre>  x = w·est + √w·se·t_ν,   w = spread²/(spread² + se²),   g = 100(e^{x/100} − 1)</pre>
 *
 * <p>with the spread of real changes 1.7 and t cut at ± 6. An expected one is normal. {@code Gains ×} moves mean and sd, est and se,
 * so before the drawing in.
 */
public final class GainDraws {
    private final Scenario scenario;
    private final Streams streams;
    private final double factor;

    GainDraws(Scenario scenario, Streams streams) {
        this.scenario = scenario;
        this.streams = streams;
        this.factor = scenario.value(Common.GAINS);
    }

    double[] of(Gain gain) {
        return gain instanceof Gain.Measured measured
                ? measured(measured)
                : normal(((Gain.Expected) gain).percent(), Ingredient.GAIN, gain.name());
    }

    /** What curing a fault gives back. */
    double[] restored(String fault) {
        return normal(scenario.problem().fault(fault).restores(), Ingredient.RESTORES, fault);
    }

    /** w·est, the middle of a measured gain as it is counted, in 100·ln. */
    public static double countedMiddle(Gain.Measured gain, double spread) {
        return weight(gain.se(), spread) * gain.estimate();
    }

    private static double weight(double se, double spread) {
        return spread * spread / (spread * spread + se * se);
    }

    private double[] normal(Normal percent, Ingredient kind, String name) {
        double[] z = streams.normal(kind, name);
        double[] gain = new double[z.length];
        for (int i = 0; i < gain.length; i++) {
            gain[i] = factor * (percent.mean() + percent.sd() * z[i]);
        }
        return gain;
    }

    private double[] measured(Gain.Measured gain) {
        double se = factor * gain.se();
        double w = weight(se, scenario.problem().assumptions().changeSpread());
        double middle = w * factor * gain.estimate();
        double[] t = streams.student(Ingredient.GAIN, gain.name(), gain.degrees());
        double[] percent = new double[t.length];
        for (int i = 0; i < percent.length; i++) {
            percent[i] = 100 * Math.expm1((middle + Math.sqrt(w) * se * t[i]) / 100);
        }
        return percent;
    }
}
