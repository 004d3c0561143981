package org.pullproof.changes;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.pullproof.dyno.PullFindings;

/**
 * What six or more pulls of one setup, made for nothing else, say of the scatter before anything is compared. A person sets them
 * apart: excluded, with a reason that begins with "calibration". In the fit they would be counted twice, and the simulation with
 * them in it gives too many false gains.
 *
 * <pre>  s0² = (ν0·s0² + RSS)/(ν0 + n − 1) ;  ν0 = min(ν0 + n − 1, 12),   RSS about the mean of the run</pre>
 *
 * <p>Own rule, simulated (O). On a dyno that scatters more than is assumed it keeps false gains of single pulls at 5 %.
 */
final class Calibration {
    private static final int FEWEST = 6;
    private static final double MOST_WEIGHT = 12;
    private static final String REASON = "calibration";

    private Calibration() {}

    /** What is assumed after the longest run that was set apart; as before if none is long enough. */
    static Prior of(List<PullFindings> pulls, Basis basis, Prior prior) {
        List<Double> longest = List.of();
        List<Double> run = new ArrayList<>();
        String setup = "";
        for (PullFindings pull : pulls) {
            boolean goesOn = isSetApart(pull) && pull.pull().setup().equals(setup);
            run = goesOn ? run : new ArrayList<>();
            setup = pull.pull().setup();
            if (isSetApart(pull) && basis.kilowatt(pull).orElse(0) > 0) {
                run.add(100 * Math.log(basis.kilowatt(pull).orElseThrow()));
            }
            longest = run.size() > longest.size() ? run : longest;
        }
        return longest.size() < FEWEST
                ? prior
                : after(longest.stream().mapToDouble(Double::doubleValue).toArray(), prior);
    }

    private static boolean isSetApart(PullFindings pull) {
        return pull.pull()
                .excluded()
                .filter(reason -> reason.strip().toLowerCase(Locale.ROOT).startsWith(REASON))
                .isPresent();
    }

    /**
     * @param y 100·ln(power) of the run
     */
    static Prior after(double[] y, Prior prior) {
        double mean = Arrays.stream(y).average().orElseThrow();
        double misfit =
                Arrays.stream(y).map(each -> (each - mean) * (each - mean)).sum();
        double free = prior.weight() + y.length - 1;
        double scatter = Math.sqrt((prior.weight() * prior.scatter() * prior.scatter() + misfit) / free);
        return prior.withScatter(scatter, Math.min(free, MOST_WEIGHT));
    }
}
