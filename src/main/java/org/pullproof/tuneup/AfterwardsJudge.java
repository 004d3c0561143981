package org.pullproof.tuneup;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.pullproof.tuneup.Afterwards.Again;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.Shown;
import org.pullproof.units.Unit;

/**
 * What is looked at again after ticked steps, and how long what is new beds in. Five hundred miles until a full load, and the rules
 * of breaking in, are judgement: common practice, no source; the builder's word comes first.
 */
final class AfterwardsJudge {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

    private static final Quantity BEDDED_AFTER = Quantity.of("500", Unit.MI);

    private final StepGraph graph;
    private final TuneUp tuneUp;
    private final Figures figures;
    private final Optional<Quantity> odometer;

    AfterwardsJudge(StepGraph graph, TuneUp tuneUp, Figures figures, Optional<Quantity> odometer) {
        this.graph = graph;
        this.tuneUp = tuneUp;
        this.figures = figures;
        this.odometer = odometer;
    }

    Afterwards judge() {
        List<BreakIn> open = tuneUp.bench().breakIns().stream()
                .filter(breakIn -> breakIn.bedded().isEmpty() && !farEnough(breakIn))
                .toList();
        return new Afterwards(again(), rules(open), lock(open));
    }

    private List<Again> again() {
        List<Again> again = new ArrayList<>();
        for (Step step : graph.steps()) {
            Optional.ofNullable(tuneUp.done().get(step.id()))
                    .ifPresent(done -> step.outfit()
                            .later()
                            .forEach(recheck -> again.add(again(step, recheck, done.toLocalDate()))));
        }
        return again;
    }

    private Again again(Step step, Recheck recheck, LocalDate done) {
        LocalDate day = done.plusDays(recheck.days());
        Optional<Quantity> at = recheck.distance().flatMap(far -> reading(far));
        return new Again(
                recheck.what(),
                step.id(),
                day,
                at,
                time(recheck, day) + distance(recheck, at),
                tuneUp.bench().rechecked().contains(recheck.what()));
    }

    private Optional<Quantity> reading(Quantity far) {
        return tuneUp.bench()
                .odometer()
                .map(start -> Quantity.of(Math.rint(start.in(far.unit()) + far.in(far.unit())), far.unit()));
    }

    private static String time(Recheck recheck, LocalDate day) {
        return switch (recheck.days()) {
            case 0 -> "after the first heat cycle";
            case 1 -> "the next day, " + DAY.format(day);
            default -> "after " + recheck.days() + " days, " + DAY.format(day);
        };
    }

    private String distance(Recheck recheck, Optional<Quantity> at) {
        return recheck.distance()
                .map(far -> at.map(read -> ", or at " + figures.of(read.si(), Shown.DISTANCE))
                        .orElseGet(() -> ", or " + figures.of(far.si(), Shown.DISTANCE) + " on"))
                .orElse("");
    }

    private boolean farEnough(BreakIn breakIn) {
        return driven(breakIn).filter(metres -> metres >= BEDDED_AFTER.si()).isPresent();
    }

    private Optional<Double> driven(BreakIn breakIn) {
        return breakIn.odometer().flatMap(start -> odometer.map(now -> now.si() - start.si()));
    }

    private static List<String> rules(List<BreakIn> open) {
        return open.stream()
                .flatMap(breakIn -> rules(breakIn.what()).stream())
                .distinct()
                .toList();
    }

    private static List<String> rules(BreakIn.What what) {
        return switch (what) {
            case RINGS ->
                List.of(
                        "Load it early and in short spells, without full load and without holding one engine speed.",
                        "Oil and filter after 20 min of running, and again after 500 mi (800 km).");
            case CAM ->
                List.of(
                        "From the first start hold 2,000 to 2,500 rpm for 20 to 30 min, no idling; stop only for a leak or"
                                + " for lost oil pressure.",
                        "Oil with much zinc for a flat-tappet camshaft; oil and filter right after that run.");
            case BEARINGS ->
                List.of(
                        "Oil pressure before the first start, by cranking without spark.",
                        "Oil and filter after 20 min of running, and again after 500 mi (800 km); cut the filter open.");
        };
    }

    private Optional<String> lock(List<BreakIn> open) {
        if (open.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(open.stream().map(this::locked).collect(Collectors.joining(" ")));
    }

    private String locked(BreakIn breakIn) {
        String driven = driven(breakIn)
                .map(metres -> ", " + figures.of(metres, Shown.DISTANCE) + " of them driven")
                .orElse("");
        return "No full-load pull yet: " + breakIn.what().words() + " since " + breakIn.since() + " bed in for about "
                + figures.of(BEDDED_AFTER.si(), Shown.DISTANCE) + driven + ", or as the builder says (judgement).";
    }
}
