package org.pullproof.changes;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * How many more pulls would settle a change that has no call yet. Blocks of two, alternating between the two setups, are added
 * to the pulls there are, the scatter kept, until
 *
 * <pre>  (t(0.95, ν) + t(0.80, ν))·s·√v ≤ max(|difference|, smallest difference worth paying for)</pre>
 *
 * <p>Own rule, simulated (O): of those that make all the pulls and then look, 80 to 85 % have it settled.
 */
final class MorePulls {
    /** A block added is two pulls. */
    static final int A_BLOCK = 2;

    private static final int MOST_BLOCKS = 8;

    /** So many pulls are the most that are looked at. */
    static final int MOST = A_BLOCK * MOST_BLOCKS;

    private MorePulls() {}

    /**
     * @param newer number of the newer setup in the fit
     * @param older number of the older
     * @param smallest the smallest difference worth paying for, percent
     * @return how many pulls; empty if more than {@link #MOST}
     */
    static OptionalInt toSettle(ChangeFit fit, int newer, int older, double smallest) {
        double wanted = Math.max(Math.abs(fit.compare(newer, older).difference()), smallest);
        List<Observation> pulls = new ArrayList<>(fit.design().pulls());
        int next = pulls.get(pulls.size() - 1).setting() == older ? newer : older;
        for (int blocks = 1; blocks <= MOST_BLOCKS; blocks++) {
            addBlock(pulls, next);
            next = next == older ? newer : older;
            if (seen(pulls, fit, newer, older) <= wanted) {
                return OptionalInt.of(A_BLOCK * blocks);
            }
        }
        return OptionalInt.empty();
    }

    /** Half width of the interval with one more pull of a setup, in y; scatter as it is. */
    static double halfWidthWithOneMore(ChangeFit fit, int newer, int older, int again) {
        List<Observation> pulls = new ArrayList<>(fit.design().pulls());
        add(pulls, again);
        Regression.Spread spread = spread(pulls, fit, newer, older);
        return Quantile.ofInterval(spread.degrees(fit.degrees() + 1)) * fit.scatter() * Math.sqrt(spread.v());
    }

    private static double seen(List<Observation> pulls, ChangeFit fit, int newer, int older) {
        Regression.Spread spread = spread(pulls, fit, newer, older);
        double degrees = spread.degrees(
                fit.degrees() + pulls.size() - fit.design().pulls().size());
        return (Quantile.ofInterval(degrees) + Quantile.ofPower(degrees)) * fit.scatter() * Math.sqrt(spread.v());
    }

    private static Regression.Spread spread(List<Observation> pulls, ChangeFit fit, int newer, int older) {
        Design design = Design.ofSettings(pulls, fit.design().prior());
        Regression more = new Regression(design, fit.regression().sigma());
        return more.spread(more.contrast(newer, older));
    }

    private static void addBlock(List<Observation> pulls, int setting) {
        for (int i = 0; i < A_BLOCK; i++) {
            add(pulls, setting);
        }
    }

    /** One more pull on the last day; it joins the last block if that is on the same setup. */
    private static void add(List<Observation> pulls, int setting) {
        Observation last = pulls.get(pulls.size() - 1);
        int block = last.setting() == setting ? last.block() : last.block() + 1;
        pulls.add(new Observation(last.day(), last.clock() + 1, block, setting, 0));
    }
}
