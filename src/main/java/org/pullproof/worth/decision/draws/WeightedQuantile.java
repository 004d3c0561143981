package org.pullproof.worth.decision.draws;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Quantiles of draws that count differently: the smallest value up to which the weights add up to a share. Weights are counted in
 * 4,000 bins first, then value by value in the one bin that matters, so single points come out exactly.
 */
public final class WeightedQuantile {
    private static final int BINS = 4000;

    /** Rounding of sums of weights: a share of exactly 10 % is not missed by its last digit. */
    private static final double ROUNDING = 1e-9;

    private record Weighed(double value, double weight) {}

    private final double[][] values;
    private final double[] weights;
    private final double least;
    private final double width;
    private final double[] bins = new double[BINS];

    /**
     * Counts the values.
     *
     * @param values one row of draws for each state
     * @param weights chance of each state; they add up to 1
     */
    public WeightedQuantile(double[][] values, double[] weights) {
        this.values = values;
        this.weights = weights;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double[] row : values) {
            for (double value : row) {
                low = Math.min(low, value);
                high = Math.max(high, value);
            }
        }
        this.least = low;
        this.width = (high - low) / BINS;
        count();
    }

    private void count() {
        for (int s = 0; s < values.length; s++) {
            double each = weights[s] / values[s].length;
            for (double value : values[s]) {
                bins[bin(value)] += each;
            }
        }
    }

    private int bin(double value) {
        return width > 0 ? Math.min(BINS - 1, (int) ((value - least) / width)) : 0;
    }

    /** The smallest value with a cumulative weight of this share. */
    public double at(double share) {
        double before = 0;
        int bin = 0;
        while (bin < BINS - 1 && before + bins[bin] < share - ROUNDING) {
            before += bins[bin];
            bin++;
        }
        return within(bin, share - ROUNDING - before);
    }

    private double within(int bin, double missing) {
        double[] range = range(bin);
        return range[0] == range[1] ? range[0] : valueByValue(bin, missing);
    }

    /** Smallest and largest value in a bin: equal for a single point, which needs no sorting. */
    private double[] range(int bin) {
        double[] range = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (int s = 0; s < values.length; s++) {
            for (double value : values[s]) {
                if (weights[s] > 0 && bin(value) == bin) {
                    range[0] = Math.min(range[0], value);
                    range[1] = Math.max(range[1], value);
                }
            }
        }
        return range;
    }

    private double valueByValue(int bin, double missing) {
        double sum = 0;
        List<Weighed> inside = inside(bin);
        for (Weighed each : inside) {
            sum += each.weight();
            if (sum >= missing) {
                return each.value();
            }
        }
        return inside.get(inside.size() - 1).value();
    }

    private List<Weighed> inside(int bin) {
        List<Weighed> inside = new ArrayList<>();
        for (int s = 0; s < values.length; s++) {
            double each = weights[s] / values[s].length;
            for (double value : values[s]) {
                if (bin(value) == bin && each > 0) {
                    inside.add(new Weighed(value, each));
                }
            }
        }
        inside.sort(Comparator.comparingDouble(Weighed::value));
        return inside;
    }
}
