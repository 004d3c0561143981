package org.pullproof.health.balance;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.pullproof.health.Median;

/**
 * Drop of engine speed with each cylinder off in turn. A cylinder that pulls little drops the speed little. There is no
 * published limit; the rule here is judgement over common practice without a source.
 *
 * @param rounds drops in rpm by cylinder, one for each round
 */
public record BalanceDrops(SortedMap<Integer, List<Double>> rounds) {
    /** Fewer cylinders than this say nothing of one another. */
    private static final int FEWEST = 3;

    /** Makes a median of distances from the median comparable to a standard deviation of normal scatter. */
    private static final double TO_DEVIATION = 1.4826;

    public BalanceDrops {
        rounds = Collections.unmodifiableSortedMap(new TreeMap<>(rounds));
    }

    /** How a cylinder pulls beside the others. */
    public enum Pull {
        LEVEL,
        WEAK,
        NONE,
        NOT_JUDGED
    }

    /**
     * The limits of the rule.
     *
     * @param weakPercent weak lies at least this many percent below the median of the others
     * @param scatterMultiple and this many times the scatter of the repeats, and of the others among themselves
     * @param deadPercent a drop below this percent of the median of the others is no pull
     */
    public record Limits(double weakPercent, double scatterMultiple, double deadPercent) {}

    /** Mean drop over the rounds in rpm, of the cylinders read. */
    public SortedMap<Integer, Double> means() {
        SortedMap<Integer, Double> means = new TreeMap<>();
        rounds.forEach((cylinder, drops) -> means.put(cylinder, mean(drops)));
        return means;
    }

    /** Share of a cylinder in the sum of all mean drops, percent; empty unless the sum is above zero. */
    public OptionalDouble sharePercent(int cylinder) {
        Map<Integer, Double> means = means();
        double sum = means.values().stream().mapToDouble(drop -> drop).sum();
        Double own = means.get(cylinder);
        return own == null || sum <= 0 ? OptionalDouble.empty() : OptionalDouble.of(100 * own / sum);
    }

    /**
     * Standard deviation of one reading from the repeats, pooled over the cylinders, rpm; empty without repeats.
     *
     * <pre>  s² = Σ (drop − mean of its cylinder)² / (readings − cylinders)</pre>
     */
    public OptionalDouble repeatScatter() {
        double squares = 0;
        int freedom = 0;
        for (List<Double> drops : rounds.values()) {
            double mean = mean(drops);
            squares += drops.stream()
                    .mapToDouble(drop -> (drop - mean) * (drop - mean))
                    .sum();
            freedom += drops.size() - 1;
        }
        return freedom == 0 ? OptionalDouble.empty() : OptionalDouble.of(Math.sqrt(squares / freedom));
    }

    /**
     * Judges one cylinder against the median of the others: weak where it lies below by more than the largest of the given
     * percentage, the scatter of repeats and the scatter of the others, each times its multiple.
     */
    public Pull judge(int cylinder, Limits limits) {
        SortedMap<Integer, Double> means = means();
        Double own = means.get(cylinder);
        if (own == null || means.size() < FEWEST) {
            return Pull.NOT_JUDGED;
        }
        double[] others = means.entrySet().stream()
                .filter(entry -> entry.getKey() != cylinder)
                .mapToDouble(Map.Entry::getValue)
                .toArray();
        double middle = Median.of(others);
        if (own < limits.deadPercent() / 100 * middle) {
            return Pull.NONE;
        }
        double clear = Math.max(
                limits.weakPercent() / 100 * middle,
                limits.scatterMultiple() * Math.max(meanScatter(cylinder), scatterOf(others)));
        return own < middle - clear ? Pull.WEAK : Pull.LEVEL;
    }

    private double meanScatter(int cylinder) {
        return repeatScatter().orElse(0)
                / Math.sqrt(rounds.getOrDefault(cylinder, List.of()).size());
    }

    private static double scatterOf(double[] others) {
        double middle = Median.of(others);
        return TO_DEVIATION
                * Median.of(Arrays.stream(others)
                        .map(drop -> Math.abs(drop - middle))
                        .toArray());
    }

    /** Median of the other cylinders' mean drops, rpm. */
    public OptionalDouble medianOfOthers(int cylinder) {
        double[] others = means().entrySet().stream()
                .filter(entry -> entry.getKey() != cylinder)
                .mapToDouble(Map.Entry::getValue)
                .toArray();
        return others.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(Median.of(others));
    }

    private static double mean(List<Double> drops) {
        return drops.stream().mapToDouble(drop -> drop).average().orElseThrow();
    }
}
