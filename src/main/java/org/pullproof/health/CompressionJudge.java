package org.pullproof.health;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pullproof.health.compression.Comparison;
import org.pullproof.health.compression.CompressionRules;
import org.pullproof.health.compression.Levels;
import org.pullproof.health.compression.OilVolume;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.Shown;

/** How the compression of one cylinder stands beside the others. */
final class CompressionJudge {
    private final Evidence evidence;
    private final HealthLimits limits;
    private final Figures figures;

    CompressionJudge(Evidence evidence, HealthLimits limits) {
        this.evidence = evidence;
        this.limits = limits;
        this.figures = evidence.figures();
    }

    /** How a dry reading stands. */
    enum Standing {
        NOT_READ,
        NOT_COMPARABLE,
        ALONE,
        DISAGREES,
        LEVEL,
        BELOW,
        LOW
    }

    Standing standing(int cylinder) {
        Comparison comparison = evidence.comparison();
        Reading.Compression dry = comparison.alike().get(cylinder);
        if (dry == null) {
            return comparison.whyNot().containsKey(cylinder) ? Standing.NOT_COMPARABLE : Standing.NOT_READ;
        }
        Optional<CompressionRules> rules = evidence.rules();
        if (rules.isEmpty()) {
            return Standing.ALONE;
        }
        boolean low = rules.get().isLow(evidence.counts(), dry.gauge().si());
        if (repeatsDisagree(cylinder, low, rules.get())) {
            return Standing.DISAGREES;
        }
        if (low) {
            return Standing.LOW;
        }
        return belowOthers(cylinder) > limits.doubtBelowOthers() ? Standing.BELOW : Standing.LEVEL;
    }

    /** Repeats that lie far apart matter where one of them is low and another is not. */
    private boolean repeatsDisagree(int cylinder, boolean low, CompressionRules rules) {
        List<Reading> own = evidence.chapters().present(cylinder);
        return Repeats.disagree(own, limits.repeatApart())
                && own.stream()
                        .filter(reading -> reading.test() == TestKind.COMPRESSION_DRY)
                        .map(Reading.Compression.class::cast)
                        .anyMatch(reading ->
                                rules.isLow(evidence.counts(), reading.gauge().si()) != low);
    }

    /** How far a reading lies below the median of the others, percent of it; negative above it. */
    double belowOthers(int cylinder) {
        Map<Integer, Double> pascal = evidence.comparison().pascal();
        double[] others = pascal.entrySet().stream()
                .filter(entry -> entry.getKey() != cylinder)
                .mapToDouble(Map.Entry::getValue)
                .toArray();
        double middle = Median.of(others);
        return middle <= 0 ? 0 : 100 * (middle - pascal.getOrDefault(cylinder, middle)) / middle;
    }

    /**
     * How much more the wet reading rose than oil that seals nothing explains, percent of the dry reading: than those of the
     * level cylinders read wet, else than the volume of the oil makes by geometry.
     */
    OptionalDouble netOilGain(int cylinder) {
        OptionalDouble own = oilGain(cylinder);
        double ofLevel = controls(cylinder).stream()
                .mapToDouble(other -> oilGain(other).orElse(0))
                .average()
                .orElseGet(() -> OilVolume.gainPercent(evidence.profile().geometry(), oilPutIn(cylinder)));
        return own.isPresent() ? OptionalDouble.of(own.getAsDouble() - ofLevel) : own;
    }

    private double oilPutIn(int cylinder) {
        return Optional.ofNullable(evidence.wet().get(cylinder))
                .flatMap(wet -> wet.conditions().oil())
                .map(Quantity::si)
                .orElse(OilVolume.UNLESS_RECORDED);
    }

    private List<Integer> controls(int cylinder) {
        return evidence.wet().keySet().stream()
                .filter(other -> other != cylinder && oilGain(other).isPresent())
                .filter(other -> standing(other) == Standing.LEVEL)
                .toList();
    }

    private OptionalDouble oilGain(int cylinder) {
        OptionalDouble dry = dryPascal(cylinder);
        OptionalDouble wet = pascal(evidence.wet(), cylinder);
        if (dry.isEmpty() || wet.isEmpty() || dry.getAsDouble() <= 0) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(100 * (wet.getAsDouble() / dry.getAsDouble() - 1));
    }

    boolean oilHelps(int cylinder) {
        return netOilGain(cylinder).orElse(0) > limits.oilHelpsGain();
    }

    boolean oilDoesNotHelp(int cylinder) {
        return netOilGain(cylinder).orElse(Double.MAX_VALUE) <= limits.oilHelpsGain();
    }

    /** A cylinder beside this one in its bank that is low too, neither of them helped by oil: a gasket between them. */
    Optional<Integer> lowNeighbour(int cylinder) {
        List<Integer> bank = evidence.profile().bankOf(cylinder).cylinders();
        int place = bank.indexOf(cylinder);
        return bank.stream()
                .filter(other -> Math.abs(bank.indexOf(other) - place) == 1)
                .filter(other -> standing(other) == Standing.LOW)
                .filter(other -> !oilHelps(other) && !oilHelps(cylinder))
                .findFirst();
    }

    /** What speaks for or against the compression of one cylinder. */
    Optional<Ground> ground(int cylinder) {
        String who = "Cylinder " + cylinder + ": ";
        return switch (standing(cylinder)) {
            case LOW -> Optional.of(Ground.fails("", who + lowSentence(cylinder)));
            case BELOW ->
                Optional.of(Ground.doubts(
                        "",
                        who + shown(cylinder) + " lies " + Figures.percent(belowOthers(cylinder), 0)
                                + " below the middle of the others; leak-down tells whether it leaks."));
            case DISAGREES ->
                Optional.of(Ground.doubts(
                        "", who + "its dry readings disagree (" + allShown(cylinder) + "); read it once more."));
            case NOT_COMPARABLE ->
                Optional.of(Ground.doubts(
                        "",
                        who + shown(cylinder) + " does not compare: " + whyNot(cylinder)
                                + "; read it again like the others."));
            case ALONE, NOT_READ, LEVEL -> Optional.empty();
        };
    }

    private String lowSentence(int cylinder) {
        Levels levels = Levels.of(evidence.comparison().pascal().values()).orElseThrow();
        return shown(cylinder) + " is "
                + Figures.percent(100 * dryPascal(cylinder).orElse(0) / levels.highest(), 0) + " of the highest, "
                + figures.of(levels.highest(), Shown.COMPRESSION) + "; the rule that counts: "
                + evidence.counts().words() + " (" + evidence.counts().source() + ")." + oilSentence(cylinder)
                + lowNeighbour(cylinder)
                        .map(other -> " Cylinder " + other
                                + " beside it is low too: a gasket between them does that; listen at its plug hole.")
                        .orElse("");
    }

    private String oilSentence(int cylinder) {
        if (netOilGain(cylinder).isEmpty()) {
            return "";
        }
        String wet = shown(evidence.wet(), cylinder);
        return oilHelps(cylinder)
                ? " Oil brings it to " + wet + ": the rings or the bore."
                : " Oil does not help (" + wet + "): not the rings.";
    }

    private OptionalDouble dryPascal(int cylinder) {
        return pascal(evidence.dry(), cylinder);
    }

    private static OptionalDouble pascal(Map<Integer, Reading.Compression> readings, int cylinder) {
        return Optional.ofNullable(readings.get(cylinder)).stream()
                .mapToDouble(reading -> reading.gauge().si())
                .findFirst();
    }

    /** Why a dry reading does not compare, in a few words. */
    String whyNot(int cylinder) {
        return evidence.comparison().whyNot().getOrDefault(cylinder, "");
    }

    /** A dry reading in percent of the median of some others; empty without it or them. */
    OptionalDouble percentOf(int cylinder, List<Integer> others) {
        Map<Integer, Double> pascal = evidence.comparison().pascal();
        double[] beside = others.stream()
                .filter(other -> other != cylinder && pascal.containsKey(other))
                .mapToDouble(other -> pascal.getOrDefault(other, 0.0))
                .toArray();
        if (!pascal.containsKey(cylinder) || beside.length == 0 || Median.of(beside) <= 0) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(100 * pascal.getOrDefault(cylinder, 0.0) / Median.of(beside));
    }

    String shown(int cylinder) {
        return shown(evidence.dry(), cylinder);
    }

    private String shown(Map<Integer, Reading.Compression> readings, int cylinder) {
        return Optional.ofNullable(readings.get(cylinder)).map(this::shown).orElse("");
    }

    private String shown(Reading.Compression reading) {
        return ReadingWords.asRead(reading.gauge(), Shown.COMPRESSION, figures);
    }

    private String allShown(int cylinder) {
        return Phrase.list(evidence.chapters().present(cylinder).stream()
                .filter(reading -> reading.test() == TestKind.COMPRESSION_DRY)
                .map(Reading.Compression.class::cast)
                .map(this::shown)
                .toList());
    }
}
