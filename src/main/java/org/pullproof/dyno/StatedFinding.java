package org.pullproof.dyno;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pullproof.units.Sentence;

/**
 * What a figure of another sheet amounts to on this session's standard, beside what the car makes now.
 *
 * @param figure as stated
 * @param range where it lies on this session's standard; empty if its own standard is not told
 * @param now what the car makes now; empty without a corrected pull
 * @param difference now less stated; empty unless both can be compared
 * @param call what may be said
 * @param sentence the answer in words, with its reason
 * @param missing what the sheet does not say, one sentence each
 */
public record StatedFinding(
        StatedFigure figure,
        Optional<Range> range,
        Optional<Figure> now,
        Optional<Figure> difference,
        Call call,
        Sentence sentence,
        List<String> missing) {
    public StatedFinding {
        missing = List.copyOf(missing);
    }

    /**
     * @param lowKw lower end, kW
     * @param highKw upper end, kW
     */
    public record Range(double lowKw, double highKw) {
        public double middle() {
            return (lowKw + highKw) / 2;
        }

        /** Whether nothing is left open: the standard is ours already. */
        boolean isExact() {
            return highKw - lowKw < 1e-9 * highKw;
        }
    }

    /**
     * @param kw the figure, kW
     * @param halfWidthKw half width of its 90 % interval, kW
     */
    public record Figure(double kw, double halfWidthKw) {}

    /** What may be said of the power now against the power stated. */
    public enum Call {
        GAIN,
        LOSS,
        NO_CALL;

        public String key() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }
}
