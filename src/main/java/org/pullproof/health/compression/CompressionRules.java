package org.pullproof.health.compression;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
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

    private static final String ARMY = "Army TM ";

    private record OfTheTrade(
            String name,
            String source,
            ToDoubleFunction<Levels> lowestAllowed,
            BiFunction<Levels, Figures, String> found) {}

    private static final List<OfTheTrade> RULES = List.of(
            new OfTheTrade(
                    "no two cylinders more than 10 psi (69 kPa) apart",
                    ARMY + "10-3930-618-20",
                    levels -> levels.highest() - TEN_POUNDS,
                    (levels, figures) -> figures.of(levels.highest() - levels.lowest(), Shown.COMPRESSION) + " apart"),
            new OfTheTrade(
                    "no two cylinders more than 10 % apart",
                    "common practice, no source",
                    levels -> 0.90 * levels.highest(),
                    (levels, figures) -> Figures.percent(levels.spreadPercent(), 1) + " apart"),
            new OfTheTrade(
                    "none 20 % below the average",
                    ARMY + "1-1500-204-23-1",
                    levels -> 0.80 * levels.mean(),
                    (levels, figures) -> "lowest " + figures.of(levels.lowest(), Shown.COMPRESSION) + " is "
                            + Figures.percent(100 * (1 - levels.lowest() / levels.mean()), 0) + " below the average, "
                            + figures.of(levels.mean(), Shown.COMPRESSION)),
            new OfTheTrade(
                    "lowest at least 75 % of the highest",
                    ARMY + "5-4210-230-14&P-1, Addendum 2",
                    levels -> 0.75 * levels.highest(),
                    CompressionRules::share));

    private CompressionRules() {}

    /**
     * Judges readings that compare; empty with fewer than two.
     *
     * @param readings gauge readings, Pa over the surroundings
     * @param toSeaLevel factor that restates them for 101.325 kPa, 1 where the air's pressure is not known
     */
    public static List<Rule> judge(Collection<Double> readings, double toSeaLevel, Figures figures) {
        return Levels.of(readings)
                .map(levels -> Stream.concat(RULES.stream(), Stream.of(makersRule(toSeaLevel)))
                        .sorted(Comparator.comparingDouble((OfTheTrade rule) ->
                                        rule.lowestAllowed().applyAsDouble(levels))
                                .reversed())
                        .map(rule -> judged(rule, levels, figures))
                        .toList())
                .orElse(List.of());
    }

    private static Rule judged(OfTheTrade rule, Levels levels, Figures figures) {
        double allowed = rule.lowestAllowed().applyAsDouble(levels);
        return new Rule(
                rule.name(),
                levels.lowest() >= allowed * (1 - ROUNDING),
                rule.source(),
                rule.found().apply(levels, figures));
    }

    /** The makers' floor is meant near sea level, so it is held against the restated reading. */
    private static OfTheTrade makersRule(double toSeaLevel) {
        return new OfTheTrade(
                "lowest at least 70 % of the highest and none below 689 kPa (100 psi)",
                "service pages of several car makers",
                levels -> Math.max(0.70 * levels.highest(), FLOOR / toSeaLevel),
                (levels, figures) -> share(levels, figures)
                        + (toSeaLevel == 1
                                ? ""
                                : "; restated for sea level the lowest is "
                                        + figures.of(levels.lowest() * toSeaLevel, Shown.COMPRESSION)));
    }

    private static String share(Levels levels, Figures figures) {
        return "lowest " + figures.of(levels.lowest(), Shown.COMPRESSION) + " is "
                + Figures.percent(levels.lowestShare(), 0) + " of the highest, "
                + figures.of(levels.highest(), Shown.COMPRESSION);
    }
}
