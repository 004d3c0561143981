package org.pullproof.dyno;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntToDoubleFunction;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/** Medians of a figure over every 100 rpm: what is left of a noisy channel when single samples no longer count. */
final class Medians {
    private static final int WIDTH = 100;

    private Medians() {}

    /** From low to high speed; a stretch without a figure is left out. */
    static double[] of(Recording rows, IntToDoubleFunction figure) {
        Map<Integer, List<Double>> bins = new TreeMap<>();
        for (int row = 0; row < rows.size(); row++) {
            double value = figure.applyAsDouble(row);
            if (Double.isFinite(value)) {
                bins.computeIfAbsent((int) (rows.at(Role.RPM, row) / WIDTH), bin -> new ArrayList<>())
                        .add(value);
            }
        }
        return bins.values().stream()
                .mapToDouble(bin -> new Median()
                        .evaluate(bin.stream().mapToDouble(Double::doubleValue).toArray()))
                .toArray();
    }
}
