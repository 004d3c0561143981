package org.pullproof.changes;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * The matrices of a fit: the columns of what is asked (one 0/1 column a setting, or the powers of a numeric setting), one column
 * of centred time a day, and, where there are several days, one 0/1 column a day; the covariance of the pulls; and rows that
 * carry what is assumed beforehand.
 */
final class Design {
    private final List<Observation> pulls;
    private final Prior prior;
    private final double[][] effects;
    private final List<PriorRow> effectPriors;
    private final int days;
    private final double[] meanClocks;

    /**
     * @param effects a row of the asked columns for each pull
     * @param effectPriors what is assumed of those columns, each with its weights of them; gives back a degree of freedom
     */
    Design(List<Observation> pulls, Prior prior, double[][] effects, List<PriorRow> effectPriors) {
        if (pulls.isEmpty()) {
            throw new IllegalArgumentException("A fit needs at least one pull");
        }
        this.pulls = List.copyOf(pulls);
        this.prior = prior;
        this.effects = effects;
        this.days = 1 + pulls.stream().mapToInt(Observation::day).max().orElseThrow();
        this.meanClocks = meanClocks();
        this.effectPriors = effectPriors.stream()
                .map(assumed -> new PriorRow(Arrays.copyOf(assumed.row(), columns()), assumed.response()))
                .toList();
    }

    /** One 0/1 column a setting. */
    static Design ofSettings(List<Observation> pulls, Prior prior) {
        int settings = 1 + pulls.stream().mapToInt(Observation::setting).max().orElse(0);
        return of(pulls, prior, pull -> {
            double[] row = new double[settings];
            row[pull.setting()] = 1;
            return row;
        });
    }

    /** Columns made from each pull, of which nothing is assumed. */
    static Design of(List<Observation> pulls, Prior prior, Function<Observation, double[]> effects) {
        double[][] rows = pulls.stream().map(effects).toArray(double[][]::new);
        return new Design(pulls, prior, rows, List.of());
    }

    private double[] meanClocks() {
        double[] means = new double[days];
        for (int day = 0; day < days; day++) {
            int which = day;
            means[day] = pulls.stream()
                    .filter(pull -> pull.day() == which)
                    .mapToDouble(Observation::clock)
                    .average()
                    .orElse(0);
        }
        return means;
    }

    Prior prior() {
        return prior;
    }

    List<Observation> pulls() {
        return pulls;
    }

    int days() {
        return days;
    }

    int effects() {
        return effects[0].length;
    }

    int columns() {
        return effects() + days + (hasDayLevels() ? days : 0);
    }

    /** Columns that no prior row holds; each costs a degree of freedom. */
    int freeColumns() {
        return effects() - effectPriors.size() + (prior.drift() > 0 ? 0 : days);
    }

    /** ν = ν0 + N − (columns without a prior row). */
    double degrees() {
        return prior.weight() + pulls.size() - freeColumns();
    }

    boolean hasDayLevels() {
        return days > 1;
    }

    /** Whether some setting has two pulls on one day. */
    boolean hasRepeats() {
        return pulls.stream()
                        .map(pull -> List.of(pull.day(), pull.setting()))
                        .distinct()
                        .count()
                < pulls.size();
    }

    int driftColumn(int day) {
        return effects() + day;
    }

    int dayColumn(int day) {
        return effects() + days + day;
    }

    double[] response() {
        return pulls.stream().mapToDouble(Observation::y).toArray();
    }

    /** One row a pull. */
    RealMatrix rows() {
        RealMatrix x = new Array2DRowRealMatrix(pulls.size(), columns());
        x.setSubMatrix(effects, 0, 0);
        for (int i = 0; i < pulls.size(); i++) {
            Observation pull = pulls.get(i);
            x.setEntry(i, driftColumn(pull.day()), centredClock(pull));
            if (hasDayLevels()) {
                x.setEntry(i, dayColumn(pull.day()), 1);
            }
        }
        return x;
    }

    /** The clock of a pull less the mean clock of the pulls of its day. */
    double centredClock(Observation pull) {
        return pull.clock() - meanClocks[pull.day()];
    }

    /**
     * Covariance of the pulls in units of s²: V = [i=j] + ω²·min(clock i, clock j) + b²·[same block]; pulls of different days
     * have nothing in common.
     */
    RealMatrix covariance() {
        RealMatrix v = new Array2DRowRealMatrix(pulls.size(), pulls.size());
        for (int i = 0; i < pulls.size(); i++) {
            for (int j = 0; j < pulls.size(); j++) {
                v.setEntry(i, j, (i == j ? 1 : 0) + common(pulls.get(i), pulls.get(j)));
            }
        }
        return v;
    }

    private double common(Observation a, Observation b) {
        if (a.day() != b.day()) {
            return 0;
        }
        double walk = prior.wander() * prior.wander() * Math.min(a.clock(), b.clock());
        return walk + (a.block() == b.block() ? prior.block() * prior.block() : 0);
    }

    /**
     * What is assumed beforehand, one row each: no drift (√κ), with several days no day level (σ over its standard deviation),
     * and what is assumed of the asked columns.
     *
     * @param sigma σ, scatter in percent that the day level is compared with
     */
    List<PriorRow> priorRows(double sigma) {
        List<PriorRow> rows = new ArrayList<>();
        for (int day = 0; day < days; day++) {
            if (prior.drift() > 0) {
                rows.add(PriorRow.on(driftColumn(day), columns(), Math.sqrt(prior.drift()), 0));
            }
            if (hasDayLevels()) {
                rows.add(PriorRow.on(dayColumn(day), columns(), sigma / prior.dayLevel(), 0));
            }
        }
        rows.addAll(effectPriors);
        return rows;
    }
}
