package org.pullproof.health.compression;

import java.util.Collection;
import java.util.Optional;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.StatUtils;

/**
 * Two banks compared by the scatter inside them.
 *
 * @param difference mean of the first bank less mean of the second, Pa
 * @param half half width of its 90 % interval, Pa
 */
public record Banks(double difference, double half) {

    /**
     * Compares two banks by Student's two-sample interval with pooled variance:
     *
     * <pre>
     *   d = mean₁ − mean₂,   s² = (SS₁ + SS₂)/(n₁ + n₂ − 2)
     *   half = t(0.95, n₁ + n₂ − 2) · s · √(1/n₁ + 1/n₂)
     * </pre>
     *
     * <p>Source: Student's pooled two-sample t, any textbook [P]; checked against R's {@code t.test} in {@code BanksTest}.
     *
     * @param first readings of one bank, Pa
     * @param second readings of the other, Pa
     * @return empty unless both banks have two readings or more
     */
    public static Optional<Banks> of(Collection<Double> first, Collection<Double> second) {
        if (first.size() < 2 || second.size() < 2) {
            return Optional.empty();
        }
        double[] one = array(first);
        double[] other = array(second);
        int freedom = one.length + other.length - 2;
        double variance = (squares(one) + squares(other)) / freedom;
        double error = Math.sqrt(variance * (1.0 / one.length + 1.0 / other.length));
        double t = new TDistribution(freedom).inverseCumulativeProbability(0.95);
        return Optional.of(new Banks(StatUtils.mean(one) - StatUtils.mean(other), t * error));
    }

    private static double[] array(Collection<Double> readings) {
        return readings.stream().mapToDouble(reading -> reading).toArray();
    }

    /** Sum of squares about the mean. */
    private static double squares(double[] readings) {
        return StatUtils.variance(readings) * (readings.length - 1);
    }

    /** Whether the banks lie further apart than the scatter inside them explains. */
    public boolean apart() {
        return Math.abs(difference) > half;
    }
}
