package org.pullproof.changes;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * The matrices of a fit: one 0/1 column a setting, one column of centred time a day, and, where there are several days, one
 * 0/1 column a day; the covariance of the pulls; and rows that carry what is assumed beforehand (pseudo-pulls with the
 * response 0). Further columns and rows join here.
 */
final class Design {
    private final List<Observation> pulls;
    private final Prior prior;
    private final int settings;
    private final int days;

    Design(List<Observation> pulls, Prior prior) {
        if (pulls.isEmpty()) {
            throw new IllegalArgumentException("A fit needs at least one pull");
        }
        this.pulls = List.copyOf(pulls);
        this.prior = prior;
        this.settings = 1 + pulls.stream().mapToInt(Observation::setting).max().orElseThrow();
        this.days = 1 + pulls.stream().mapToInt(Observation::day).max().orElseThrow();
    }

    int pulls() {
        return pulls.size();
    }

    int days() {
        return days;
    }

    int columns() {
        return settings + days + (hasDayLevels() ? days : 0);
    }

    /** Columns that no prior row holds; each costs a degree of freedom. */
    int freeColumns() {
        return settings + (prior.drift() > 0 ? 0 : days);
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

    int settingColumn(int setting) {
        return setting;
    }

    int driftColumn(int day) {
        return settings + day;
    }

    int dayColumn(int day) {
        return settings + days + day;
    }

    double[] response() {
        return pulls.stream().mapToDouble(Observation::y).toArray();
    }

    /** One row a pull. */
    RealMatrix rows() {
        RealMatrix x = new Array2DRowRealMatrix(pulls.size(), columns());
        for (int i = 0; i < pulls.size(); i++) {
            Observation pull = pulls.get(i);
            x.setEntry(i, settingColumn(pull.setting()), 1);
            x.setEntry(i, driftColumn(pull.day()), centredClock(pull));
            if (hasDayLevels()) {
                x.setEntry(i, dayColumn(pull.day()), 1);
            }
        }
        return x;
    }

    /** The clock of a pull less the mean clock of the pulls of its day. */
    double centredClock(Observation pull) {
        return pull.clock()
                - pulls.stream()
                        .filter(other -> other.day() == pull.day())
                        .mapToDouble(Observation::clock)
                        .average()
                        .orElseThrow();
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
     * What is assumed beforehand, one row each: no drift (√κ), and with several days no day level (σ over its standard
     * deviation).
     *
     * @param sigma σ, scatter in percent that the day level is compared with
     */
    List<double[]> priorRows(double sigma) {
        List<double[]> rows = new ArrayList<>();
        for (int day = 0; day < days; day++) {
            if (prior.drift() > 0) {
                rows.add(row(driftColumn(day), Math.sqrt(prior.drift())));
            }
            if (hasDayLevels()) {
                rows.add(row(dayColumn(day), sigma / prior.dayLevel()));
            }
        }
        return rows;
    }

    private double[] row(int column, double value) {
        double[] row = new double[columns()];
        row[column] = value;
        return row;
    }
}
