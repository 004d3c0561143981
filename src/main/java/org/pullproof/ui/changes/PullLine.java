package org.pullproof.ui.changes;

import org.pullproof.dyno.PullFindings;
import org.pullproof.units.Figures;
import org.pullproof.units.Shown;

/**
 * One pull of a change in words.
 *
 * @param name "base-3"
 * @param power its band power, or that it has none
 * @param remark why it does not count, or its flags; may be empty
 */
public record PullLine(String name, String power, String remark) {
    static PullLine of(PullFindings pull, Figures figures) {
        String power = pull.bandCorrectedKw().isPresent()
                ? figures.of(pull.bandCorrectedKw().getAsDouble() * 1e3, Shown.POWER)
                : pull.bandMeasuredKw().isPresent()
                        ? figures.of(pull.bandMeasuredKw().getAsDouble() * 1e3, Shown.POWER) + " measured"
                        : "no band power";
        String remark =
                pull.pull().excluded().map(reason -> "excluded: " + reason).orElse(String.join(" ", pull.flags()));
        return new PullLine(pull.name(), power, remark);
    }
}
