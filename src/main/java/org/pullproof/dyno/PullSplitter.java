package org.pullproof.dyno;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds where in a recording the pulls are: stretches over which the speed rises. A new one begins where the speed fell back by more
 * than {@link #FALL_RPM} and by more than half of what it had risen (O); a small fall inside a pull is part of it. Where a column
 * numbers the pulls, that column says.
 */
final class PullSplitter {
    static final double FALL_RPM = 300;
    private static final double FALL_SHARE = 0.5;

    /** A rise of less than this share of the longest is no pull: running up through the gears. */
    private static final double LEAST_RISE = 0.5;

    /**
     * A stretch of rising speed.
     *
     * @param from first row, of the lowest speed
     * @param to row after the highest speed
     */
    record Stretch(int from, int to) {}

    private final double[] rpm;

    private PullSplitter(double[] rpm) {
        this.rpm = rpm;
    }

    static List<Stretch> split(Recording recording) {
        PullSplitter splitter = new PullSplitter(recording.finite(Role.RPM));
        List<Stretch> numbered = splitter.numbered(recording);
        return numbered.size() > 1 ? numbered : splitter.longEnough(splitter.rising(0, recording.size()));
    }

    /** The longest rise in each run of rows with one number. */
    private List<Stretch> numbered(Recording recording) {
        List<Stretch> found = new ArrayList<>();
        if (!recording.logs(Role.PULL)) {
            return found;
        }
        int from = 0;
        for (int row = 1; row <= recording.size(); row++) {
            boolean ends = row == recording.size()
                    || Double.compare(recording.at(Role.PULL, row), recording.at(Role.PULL, from)) != 0;
            if (ends) {
                if (Double.isFinite(recording.at(Role.PULL, from))) {
                    rising(from, row).stream()
                            .max(Comparator.comparingDouble(this::rise))
                            .ifPresent(found::add);
                }
                from = row;
            }
        }
        return found;
    }

    private List<Stretch> longEnough(List<Stretch> stretches) {
        double longest = stretches.stream().mapToDouble(this::rise).max().orElse(0);
        return stretches.stream()
                .filter(stretch -> rise(stretch) >= LEAST_RISE * longest)
                .toList();
    }

    private double rise(Stretch stretch) {
        return rpm[stretch.to() - 1] - rpm[stretch.from()];
    }

    private List<Stretch> rising(int from, int to) {
        List<Stretch> found = new ArrayList<>();
        int low = from;
        int top = from;
        for (int row = from; row < to; row++) {
            if (rpm[row] > rpm[top]) {
                top = row;
            } else if (fellBack(low, top, row)) {
                found.add(new Stretch(low, top + 1));
                low = lowest(row, to);
                top = low;
                row = low;
            } else if (rpm[row] < rpm[low]) {
                low = row;
                top = row;
            }
        }
        if (rpm[top] > rpm[low]) {
            found.add(new Stretch(low, top + 1));
        }
        return found;
    }

    private boolean fellBack(int low, int top, int row) {
        double rise = rpm[top] - rpm[low];
        return rpm[top] - rpm[row] > Math.max(FALL_RPM, FALL_SHARE * rise) && rise > FALL_RPM;
    }

    /** The lowest row from there on until the speed has risen again. */
    private int lowest(int from, int to) {
        int low = from;
        for (int row = from; row < to && rpm[row] - rpm[low] <= FALL_RPM; row++) {
            low = rpm[row] < rpm[low] ? row : low;
        }
        return low;
    }
}
