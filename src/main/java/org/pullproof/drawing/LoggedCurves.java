package org.pullproof.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.pullproof.drawing.Panel.SetupLine;
import org.pullproof.dyno.DynoFindings;
import org.pullproof.dyno.PullFindings;
import org.pullproof.dyno.Recording;
import org.pullproof.dyno.Role;
import org.pullproof.engine.Setup;
import org.pullproof.units.Figures;
import org.pullproof.units.Shown;
import org.pullproof.units.Unit;

/** What was logged besides power, as one line a setup: the mean of its counted pulls in steps of {@link #STEP} rpm. */
final class LoggedCurves {
    /** Wide enough for a few samples a step at the usual rates of logging (O). */
    static final int STEP = 50;

    private final DynoFindings findings;
    private final List<Setup> setups;
    private final Figures figures;

    LoggedCurves(PowerChart.Content content) {
        this.findings = content.findings();
        this.setups = content.setups();
        this.figures = content.figures();
    }

    List<SetupLine> lines(Role role) {
        List<String> ids = LineStyle.setups(findings);
        List<SetupLine> lines = new ArrayList<>();
        for (int i = 0; i < ids.size(); i++) {
            String id = ids.get(i);
            SortedMap<Integer, Double> mean = mean(id, role);
            if (!mean.isEmpty()) {
                lines.add(new SetupLine(i, id, SetupCurves.name(id, setups), mean));
            }
        }
        return lines;
    }

    private SortedMap<Integer, Double> mean(String setup, Role role) {
        SortedMap<Integer, Double> sums = new TreeMap<>();
        SortedMap<Integer, Integer> counts = new TreeMap<>();
        for (PullFindings pull : findings.pulls()) {
            if (!pull.excluded() && pull.pull().setup().equals(setup)) {
                add(pull.trace().recording(), role, sums, counts);
            }
        }
        sums.replaceAll((rpm, sum) -> shown(role, sum / counts.getOrDefault(rpm, 1)));
        return sums;
    }

    private static void add(
            Recording logged, Role role, SortedMap<Integer, Double> sums, SortedMap<Integer, Integer> counts) {
        for (int row = 0; row < logged.size(); row++) {
            double value = logged.at(role, row);
            double rpm = logged.at(Role.RPM, row);
            if (Double.isFinite(value) && Double.isFinite(rpm)) {
                int step = (int) Math.round(rpm / STEP) * STEP;
                sums.merge(step, value, Double::sum);
                counts.merge(step, 1, Integer::sum);
            }
        }
    }

    private double shown(Role role, double si) {
        return switch (role.dimension()) {
            case TEMPERATURE -> figures.unit(Shown.AIR_TEMPERATURE).fromSi(si);
            case PRESSURE -> Unit.KPA.fromSi(si);
            case SHARE -> Unit.PERCENT.fromSi(si);
            default -> si;
        };
    }

    /** The unit of a panel: "°C", "kPa", "%", "V", or nothing for a ratio. */
    String unit(Role role) {
        return switch (role.dimension()) {
            case TEMPERATURE -> figures.unit(Shown.AIR_TEMPERATURE).symbol();
            case PRESSURE -> Unit.KPA.symbol();
            case SHARE -> Unit.PERCENT.symbol();
            case VOLTAGE -> "V";
            default -> "";
        };
    }
}
