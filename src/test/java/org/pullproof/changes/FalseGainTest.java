package org.pullproof.changes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * How often the call is wrong, on pulls made as the method's own simulation made them: six setups, two pulls each, back to the
 * first after every one (AA BB AA CC …, 22 pulls), scatter lognormal around 0.55 %, a drift of −0.1 to −0.4 % a pull. Its table
 * gives for this design 2 % false gains, 4 % missed gains of +2 % and 95 % coverage; limits here leave room for 400 sessions.
 */
class FalseGainTest {
    private static final int SESSIONS = 400;
    private static final int CHANGES = 5;

    @Test
    void aChangeWithoutEffectIsSeldomCalledAGain() {
        assertThat(share(0, change -> change.low() > 0)).isLessThan(0.05);
    }

    @Test
    void aGainOfTwoPercentIsSeldomMissed() {
        assertThat(share(2, change -> change.low() <= 0)).isLessThan(0.08);
    }

    @Test
    void theIntervalHoldsTheTruthAtLeastAsOftenAsItSays() {
        assertThat(share(1, change -> change.low() <= 1 && change.high() >= 1)).isGreaterThan(0.90);
    }

    private interface Outcome {
        boolean of(Estimate change);
    }

    /** Share of all changes, each of the same true size, that come out so. */
    private static double share(double truth, Outcome outcome) {
        Random random = new Random(20260614);
        int hits = 0;
        for (int session = 0; session < SESSIONS; session++) {
            ChangeFit fit = ChangeFit.of(session(random, truth), Prior.OF_THIS_PROJECT);
            for (int setting = 1; setting <= CHANGES; setting++) {
                hits += outcome.of(fit.compare(setting, 0)) ? 1 : 0;
            }
        }
        return hits / (double) (SESSIONS * CHANGES);
    }

    private static List<Observation> session(Random random, double truth) {
        double scatter = Math.min(1.2, Math.max(0.25, 0.55 * Math.exp(0.35 * random.nextGaussian())));
        double drift = -0.1 - 0.3 * random.nextDouble();
        List<Observation> pulls = new ArrayList<>();
        for (int block = 0; block <= 2 * CHANGES; block++) {
            int setting = block % 2 == 0 ? 0 : (block + 1) / 2;
            for (int repeat = 0; repeat < 2; repeat++) {
                int clock = pulls.size() + 1;
                double y = 460 + (setting == 0 ? 0 : truth) + drift * clock + scatter * random.nextGaussian();
                pulls.add(new Observation(0, clock, block, setting, y));
            }
        }
        return pulls;
    }
}
