package org.pullproof.health;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.pullproof.health.leakdown.LeakReading;
import org.pullproof.health.leakdown.OneHole;
import org.pullproof.units.Figures;

/** What the leak-down reading of one cylinder says. */
final class LeakJudge {
    /** Testers that differ by less than this many percent points read alike. */
    private static final double WORTH_SAYING = 2;

    private final Evidence evidence;
    private final HealthLimits limits;
    private final CompressionJudge compression;
    private final OneHole hole;
    private final FaultJudge faults;

    LeakJudge(Evidence evidence, HealthLimits limits, CompressionJudge compression, FaultJudge faults) {
        this.faults = faults;
        this.evidence = evidence;
        this.limits = limits;
        this.compression = compression;
        this.hole = new OneHole(limits.oneHoleSpread(), limits.oneHoleSlack());
    }

    /** How a leak-down reading stands. */
    enum Standing {
        NOT_READ,
        WITHIN,
        /** A zone that reaches over the limit. */
        MAY_LEAK,
        /** Above the limit, and nobody listened or nothing was heard. */
        LEAKS_UNHEARD,
        /** Above the limit, while its compression is level and no hole does both. */
        MISFIT,
        LEAKS
    }

    Standing standing(int cylinder) {
        Optional<LeakReading> leak = Optional.ofNullable(evidence.leaks().get(cylinder));
        if (leak.isEmpty()) {
            return Standing.NOT_READ;
        }
        if (isAbove(leak.get())) {
            if (compression.standing(cylinder) == CompressionJudge.Standing.LEVEL && misfits(cylinder)) {
                return Standing.MISFIT;
            }
            return air(cylinder).isEmpty() ? Standing.LEAKS_UNHEARD : Standing.LEAKS;
        }
        return leak.get().mayBeAbove(limits.suspectLeak()) ? Standing.MAY_LEAK : Standing.WITHIN;
    }

    private boolean isAbove(LeakReading leak) {
        return leak.above(limits.suspectLeak());
    }

    /** Whether no single hole explains leak-down and compression together. */
    private boolean misfits(int cylinder) {
        OptionalDouble area = Optional.ofNullable(evidence.leaks().get(cylinder))
                .map(LeakReading::areaMm2)
                .orElse(OptionalDouble.empty());
        OptionalDouble share = compression.percentOf(cylinder, tight());
        return area.isPresent() && share.isPresent() && !hole.explains(area.getAsDouble(), share.getAsDouble());
    }

    /** Cylinders not known to leak. */
    private List<Integer> tight() {
        return evidence.cylinders().stream()
                .filter(cylinder -> Optional.ofNullable(evidence.leaks().get(cylinder))
                        .filter(this::isAbove)
                        .isEmpty())
                .toList();
    }

    Set<AirPlace> air(int cylinder) {
        return listened(cylinder).orElse(Set.of());
    }

    /** Where air was heard; empty if nobody listened. */
    private Optional<Set<AirPlace>> listened(int cylinder) {
        return Optional.ofNullable(evidence.leakReadings().get(cylinder)).flatMap(Reading.Leakdown::air);
    }

    /** {@code air at the exhaust and the crankcase}. */
    String airWords(int cylinder) {
        return AirWords.of(air(cylinder));
    }

    /** What the leak-down readings bring to the verdict; cylinders that say the same are told together. */
    List<Ground> grounds() {
        Map<String, List<Integer>> alike = new LinkedHashMap<>();
        for (int cylinder : evidence.cylinders()) {
            says(cylinder)
                    .ifPresent(says -> alike.computeIfAbsent(says, key -> new ArrayList<>())
                            .add(cylinder));
        }
        List<Ground> grounds = new ArrayList<>();
        alike.forEach((says, cylinders) -> {
            String sentence = Phrase.capital(Phrase.cylinders(cylinders)) + ": leak-down "
                    + Phrase.list(cylinders.stream().map(this::told).toList()) + says;
            grounds.add(weighed(cylinders, Ground.doubts("", sentence)));
        });
        evidence.cylinders().forEach(cylinder -> bothLow(cylinder).ifPresent(grounds::add));
        return grounds;
    }

    /** A leak that the fault model has made something of is only told; one it makes nothing of is a doubt. */
    private Ground weighed(List<Integer> cylinders, Ground ground) {
        boolean misfit = standing(cylinders.get(0)) == Standing.MISFIT;
        boolean heard = standing(cylinders.get(0)) == Standing.LEAKS;
        boolean weighed = cylinders.stream().allMatch(cylinder -> faults.called(cylinder) || faults.clear(cylinder));
        return heard || (weighed && !misfit) ? ground.told() : ground;
    }

    /** A cylinder low by both tests, yet not by one hole: it fails all the same, and both are read again. */
    private Optional<Ground> bothLow(int cylinder) {
        boolean leaks = standing(cylinder) == Standing.LEAKS || standing(cylinder) == Standing.LEAKS_UNHEARD;
        return leaks && misfits(cylinder)
                ? Optional.of(Ground.doubts(
                        "",
                        "Cylinder " + cylinder + ": leak-down " + told(cylinder) + " and " + compression.shown(cylinder)
                                + " do not fit one hole; repeat both."))
                : Optional.empty();
    }

    private Optional<String> says(int cylinder) {
        return switch (standing(cylinder)) {
            case NOT_READ, WITHIN -> Optional.empty();
            case MAY_LEAK -> Optional.of(", which may be more than " + limit() + "; a tester with figures tells.");
            case MISFIT ->
                Optional.of(" does not fit its level compression: no one hole does both. See that it stood at top dead"
                        + " centre, and repeat both.");
            case LEAKS_UNHEARD ->
                Optional.of((listened(cylinder).isPresent()
                                ? ", yet no air was heard"
                                : ", and nobody listened where the air goes")
                        + ". " + suspect());
            case LEAKS -> Optional.of(", " + airWords(cylinder) + ": " + paths(cylinder) + ". " + suspect());
        };
    }

    /** As read, with the reading of the reference tester where that is another. */
    private String told(int cylinder) {
        LeakReading leak = Optional.ofNullable(evidence.leaks().get(cylinder)).orElseThrow();
        double restated = leak.referencePercent().orElse(leak.fromPercent());
        return leak.words()
                + (Math.abs(restated - leak.fromPercent()) < WORTH_SAYING
                        ? ""
                        : " (" + Figures.percent(restated, 0) + " on the reference tester)");
    }

    private String limit() {
        return Figures.percent(limits.suspectLeak(), 0);
    }

    private String suspect() {
        return "More than " + limit() + " is cause to suspect the cylinder (FAA AC 43.13-1B).";
    }

    private String paths(int cylinder) {
        return air(cylinder).stream()
                .sorted()
                .map(place -> path(place, cylinder))
                .distinct()
                .collect(Collectors.joining("; "));
    }

    /** Where the air is heard tells its path: common practice, no source. */
    private String path(AirPlace place, int cylinder) {
        return switch (place) {
            case CRANKCASE -> "it passes the rings";
            case EXHAUST -> "an exhaust valve, " + heldOpen(cylinder);
            case INTAKE -> "an intake valve, " + heldOpen(cylinder);
            case NEIGHBOUR -> "the gasket to the neighbour";
            case COOLANT -> "the gasket or a crack to the coolant";
        };
    }

    /** The cheapest cause first: lash is checked before any talk of a valve job. */
    private String heldOpen(int cylinder) {
        return switch (evidence.word(cylinder, TestKind.LASH).orElse("")) {
            case "in-spec" -> "which leaks: its lash is in spec";
            case "tight" -> "held open: its lash is tight; set it and read again";
            default -> "leaking or held open: check the lash before any valve job";
        };
    }
}
