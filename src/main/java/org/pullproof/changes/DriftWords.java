package org.pullproof.changes;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.pullproof.units.Figures;

/** What time may have done to a difference: where it cannot be told from the change, and what one more pull would buy. */
final class DriftWords {
    /** A drift of this size is called typical when we say what it would do, percent a pull. */
    private static final double TYPICAL_DRIFT = 0.3;

    /** Less leverage than this is not worth a sentence. */
    private static final double LITTLE_LEVERAGE = 0.5;

    /** A setup that comes back further off than this is to be repeated, percent. */
    private static final double NOT_BACK = 2;

    private final UnaryOperator<String> names;

    /**
     * @param names the name of a setup by its id
     */
    DriftWords(UnaryOperator<String> names) {
        this.names = names;
    }

    String of(Said said) {
        List<String> parts = new ArrayList<>();
        double leverage = Math.abs(leverage(said));
        if (leverage >= LITTLE_LEVERAGE && !comesBack(said)) {
            parts.add(confounded(said, leverage));
            parts.add(oneMore(said));
        }
        parts.add(notBack(said, said.pair().from()));
        parts.add(notBack(said, said.pair().to()));
        parts.removeIf(String::isEmpty);
        return String.join(" ", parts);
    }

    private static double leverage(Said said) {
        return said.fits()
                .all()
                .driftLeverage(said.fits().newer(said.pair()), said.fits().older(said.pair()));
    }

    private static boolean comesBack(Said said) {
        PullSequence pulls = said.fits().counted();
        return pulls.settings().stream().anyMatch(setup -> pulls.blocksOf(setup).size() > 1);
    }

    private String confounded(Said said, double leverage) {
        String moved = Figures.percent(TYPICAL_DRIFT * leverage, 1);
        String later = Wording.capital(names.apply(said.pair().to())) + " came after "
                + names.apply(said.pair().from())
                + " and neither was pulled again, so a warming car looks the same as a"
                + " weaker setup: ";
        return said.fits().all().driftIsMeasured()
                ? later + "the drift is taken from within the runs and assumed to go on through the change; "
                        + Figures.percent(TYPICAL_DRIFT, 1) + " a pull more would move this by " + moved
                        + ". Rest the same time before every pull."
                : later + "a drift of " + Figures.percent(TYPICAL_DRIFT, 1) + " a pull alone would move this by "
                        + moved + ".";
    }

    private String oneMore(Said said) {
        ChangeFit fit = said.fits().all();
        int newer = said.fits().newer(said.pair());
        int older = said.fits().older(said.pair());
        double now = said.estimate().halfWidth();
        double then = MorePulls.halfWidthWithOneMore(fit, newer, older, older);
        return "One more pull on " + names.apply(said.pair().from()) + " would shrink ± " + Figures.number(now, 1)
                + " to ± " + Figures.percent(then, 1) + ".";
    }

    /** A setup that was come back to on one day, and did not come back to its figure. */
    private String notBack(Said said, String setup) {
        List<Double> blocks = said.fits().counted().blocksOf(setup);
        if (said.fits().all().design().hasDayLevels() || blocks.size() < 2) {
            return "";
        }
        double off = Estimate.percent(blocks.get(blocks.size() - 1) - blocks.get(0));
        return Math.abs(off) <= NOT_BACK
                ? ""
                : Wording.capital(names.apply(setup)) + " came back at " + Figures.signedPercent(off, 1)
                        + " of its first run: find out why and repeat it.";
    }
}
