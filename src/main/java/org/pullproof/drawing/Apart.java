package org.pullproof.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Keeps labels from standing on each other. */
final class Apart {
    private Apart() {}

    /** How many labels fit between two places. */
    static int fitting(double gap, double low, double high) {
        return (int) Math.floor((high - low) / gap) + 1;
    }

    /**
     * Moves places as little as needed so that neighbours are at least {@code gap} apart and all lie between {@code low} and
     * {@code high}; their order stays.
     *
     * @param wanted as many as fit, see {@link #fitting}
     * @return the places in the order of {@code wanted}
     */
    static List<Double> spread(List<Double> wanted, double gap, double low, double high) {
        if (wanted.size() > fitting(gap, low, high)) {
            throw new IllegalArgumentException(
                    wanted.size() + " labels do not fit between " + low + " and " + high + " with a gap of " + gap);
        }
        Integer[] order = IntStream.range(0, wanted.size()).boxed().toArray(Integer[]::new);
        Arrays.sort(order, Comparator.comparing(wanted::get));
        double[] places = new double[order.length];
        double least = low;
        for (int i = 0; i < order.length; i++) {
            places[i] = Math.max(least, wanted.get(order[i]));
            least = places[i] + gap;
        }
        double most = high;
        for (int i = order.length - 1; i >= 0; i--) {
            places[i] = Math.min(most, places[i]);
            most = places[i] - gap;
        }
        List<Double> spread = new ArrayList<>(wanted);
        for (int i = 0; i < order.length; i++) {
            spread.set(order[i], places[i]);
        }
        return spread;
    }
}
