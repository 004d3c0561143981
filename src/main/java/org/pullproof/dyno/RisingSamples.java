package org.pullproof.dyno;

import java.util.ArrayList;
import java.util.List;
import org.pullproof.dyno.PullTable.Sample;
import org.pullproof.units.Figures;

/**
 * Keeps the samples whose speed rises above every speed before. Unbroken runs of the others are named once. A speed that falls
 * far and rises again as far is a second pull, and no sample of it is read as part of the first.
 */
final class RisingSamples {
    /** How far the speed falls back, and rises again, where a second pull begins, rpm (O). */
    private static final double SECOND_PULL_RPM = 300;

    private final List<ImportProblem> problems;
    private final List<Sample> kept = new ArrayList<>();
    private final List<Sample> dropped = new ArrayList<>();

    RisingSamples(List<ImportProblem> problems) {
        this.problems = problems;
    }

    List<Sample> of(List<Sample> samples) throws UnreadablePullException {
        for (Sample sample : samples) {
            if (kept.isEmpty() || sample.rpm() > top()) {
                nameDropped();
                kept.add(sample);
            } else {
                dropped.add(sample);
                refuseSecondPull(sample);
            }
        }
        nameDropped();
        return List.copyOf(kept);
    }

    private double top() {
        return kept.get(kept.size() - 1).rpm();
    }

    private void refuseSecondPull(Sample now) throws UnreadablePullException {
        Sample low = now;
        for (Sample sample : dropped) {
            low = sample.rpm() < low.rpm() ? sample : low;
        }
        if (top() - low.rpm() > SECOND_PULL_RPM && now.rpm() - low.rpm() > SECOND_PULL_RPM) {
            throw new UnreadablePullException(
                    low.line(),
                    "the speed falls back from " + speed(top()) + " to " + speed(low.rpm())
                            + " and rises again: the file holds more than one pull. Save each pull in a file of its own.");
        }
    }

    private void nameDropped() {
        if (dropped.isEmpty()) {
            return;
        }
        Sample first = dropped.get(0);
        String rows = dropped.size() == 1
                ? "the row is left out."
                : dropped.size() + " rows up to line "
                        + dropped.get(dropped.size() - 1).line() + " are left out.";
        problems.add(new ImportProblem(
                first.line(), "rpm", "the speed does not rise above the " + speed(top()) + " before it; " + rows));
        dropped.clear();
    }

    private static String speed(double rpm) {
        return Figures.number(rpm, 0) + " rpm";
    }
}
