package org.pullproof.changes;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * Finds the pulls that the others do not bear out. The largest deletion residual is odd if it is above t(1 − 0.05/(2N), ν − 1);
 * it is taken out and the rest fitted again, at most three times. A flag is all that follows; nothing is dropped.
 *
 * <p>Source: Bonferroni limit of the largest deletion residual (Cook and Weisberg 1982, P); three at most (O).
 */
final class OddPulls {
    private static final int MOST = 3;
    private static final double LEVEL = 0.05;

    private OddPulls() {}

    /**
     * An odd pull.
     *
     * @param place its place in the list of pulls
     * @param t its deletion residual in the fit that found it
     * @param limit what t may be
     */
    record Odd(int place, double t, double limit) {}

    static List<Odd> in(List<Observation> pulls, Prior prior) {
        List<Odd> odd = new ArrayList<>();
        List<Observation> left = new ArrayList<>(pulls);
        while (odd.size() < MOST && left.size() > 2) {
            ChangeFit fit = ChangeFit.firstRound(Design.ofSettings(left, prior));
            double[] t = fit.deletionResiduals();
            int most = largest(t);
            double limit = limit(fit);
            if (Math.abs(t[most]) <= limit) {
                break;
            }
            Observation found = left.remove(most);
            odd.add(new Odd(pulls.indexOf(found), t[most], limit));
        }
        return odd;
    }

    static double limit(ChangeFit fit) {
        int pulls = fit.design().pulls().size();
        return new TDistribution(fit.degrees() - 1).inverseCumulativeProbability(1 - LEVEL / (2 * pulls));
    }

    private static int largest(double[] t) {
        int most = 0;
        for (int i = 1; i < t.length; i++) {
            most = Math.abs(t[i]) > Math.abs(t[most]) ? i : most;
        }
        return most;
    }
}
