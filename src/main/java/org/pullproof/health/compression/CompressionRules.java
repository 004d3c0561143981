package org.pullproof.health.compression;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.pullproof.car.CompressionRule;
import org.pullproof.health.HealthFindings.Rule;
import org.pullproof.units.Figures;
import org.pullproof.units.Shown;
import org.pullproof.units.Unit;

/**
 * The rules of the trade for dry readings, side by side. Each says how low the lowest reading may be beside the others; the one
 * that allows least is the strictest and stands first.
 */
public final class CompressionRules {
    private static final double FLOOR = Unit.KPA.toSi(689);
    private static final double TEN_POUNDS = Unit.PSI.toSi(10);

    /** Readings are printed to whole units: a reading exactly on a limit meets it. */
    private static final double ROUNDING = 1e-9;

    private final Levels levels;
    private final double toSeaLevel;

    /**
     * @param levels of the readings that compare
     * @param toSeaLevel factor that restates them for 101.325 kPa, 1 where the air's pressure is not known
     */
    public CompressionRules(Levels levels, double toSeaLevel) {
        this.levels = levels;
        this.toSeaLevel = toSeaLevel;
    }

    /** All of them, the strictest first. */
    public List<Rule> judge(Figures figures) {
        return Arrays.stream(CompressionRule.values())
                .sorted(Comparator.comparingDouble(this::lowestAllowed).reversed())
                .map(rule -> new Rule(rule.words(), !isLow(rule, levels.lowest()), rule.source(), found(rule, figures)))
                .toList();
    }

    /** Whether a rule calls a reading low, Pa over the surroundings. */
    public boolean isLow(CompressionRule rule, double reading) {
        return reading < lowestAllowed(rule) * (1 - ROUNDING);
    }

    /** The lowest reading a rule allows, Pa. The makers' floor is meant near sea level: held against the restated reading. */
    private double lowestAllowed(CompressionRule rule) {
        return switch (rule) {
            case APART_10_PSI -> levels.highest() - TEN_POUNDS;
            case APART_10 -> 0.90 * levels.highest();
            case BELOW_AVERAGE_20 -> 0.80 * levels.mean();
            case SHARE_75 -> 0.75 * levels.highest();
            case SHARE_70 -> Math.max(0.70 * levels.highest(), FLOOR / toSeaLevel);
        };
    }

    private String found(CompressionRule rule, Figures figures) {
        String lowest = "lowest " + figures.of(levels.lowest(), Shown.COMPRESSION) + " is ";
        return switch (rule) {
            case APART_10_PSI -> figures.of(levels.highest() - levels.lowest(), Shown.COMPRESSION) + " apart";
            case APART_10 -> Figures.percent(levels.spreadPercent(), 1) + " apart";
            case BELOW_AVERAGE_20 ->
                lowest + Figures.percent(100 * (1 - levels.lowest() / levels.mean()), 0) + " below the average, "
                        + figures.of(levels.mean(), Shown.COMPRESSION);
            case SHARE_75 -> lowest + share(figures);
            case SHARE_70 -> lowest + share(figures) + restated(figures);
        };
    }

    private String share(Figures figures) {
        return Figures.percent(levels.lowestShare(), 0) + " of the highest, "
                + figures.of(levels.highest(), Shown.COMPRESSION);
    }

    private String restated(Figures figures) {
        return toSeaLevel == 1
                ? ""
                : "; restated for sea level the lowest is "
                        + figures.of(levels.lowest() * toSeaLevel, Shown.COMPRESSION);
    }
}
