package org.pullproof.tuneup;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.pullproof.tuneup.PartRecord.Fate;
import org.pullproof.units.Figures;
import org.pullproof.units.Money;
import org.pullproof.units.Quantity;
import org.pullproof.units.Shown;

/** What the steps use up, and what the owner told of it. */
final class PartsLedger {
    private static final double DAYS_A_YEAR = 365.25;

    private final StepGraph graph;
    private final TuneUp tuneUp;
    private final Figures figures;
    private final Optional<Quantity> odometer;

    PartsLedger(StepGraph graph, TuneUp tuneUp, Figures figures, Optional<Quantity> odometer) {
        this.graph = graph;
        this.tuneUp = tuneUp;
        this.figures = figures;
        this.odometer = odometer;
    }

    /** Parts of the planned steps in order, then those the owner added. */
    List<PartFinding> parts() {
        List<PartFinding> parts = new ArrayList<>();
        graph.steps().forEach(step -> step.outfit().buys().forEach(buy -> parts.add(finding(step, buy))));
        tuneUp.bench().parts().stream()
                .filter(told -> parts.stream().noneMatch(part -> part.part().equals(told.part())))
                .forEach(told -> parts.add(added(told)));
        return parts;
    }

    private PartFinding finding(Step step, Consumable buy) {
        Optional<PartRecord> told = tuneUp.bench().part(buy.name());
        return new PartFinding(
                buy.name(),
                Optional.of(step.id()),
                price(buy, told),
                told,
                !tuneUp.done().containsKey(graph.gate().id()),
                told.flatMap(this::age));
    }

    /** What was kept costs nothing. */
    private static Optional<Money> price(Consumable buy, Optional<PartRecord> told) {
        return told.filter(part -> part.fate() == Fate.KEPT).isPresent()
                ? Optional.empty()
                : told.flatMap(PartRecord::price).or(() -> Optional.of(buy.price()));
    }

    private PartFinding added(PartRecord told) {
        return new PartFinding(told.part(), Optional.empty(), told.price(), Optional.of(told), true, age(told));
    }

    /** "5.1 years old, 23,400 mi run". */
    private Optional<String> age(PartRecord told) {
        if (told.fate() != Fate.KEPT) {
            return Optional.empty();
        }
        Optional<String> years = told.fitted()
                .map(since ->
                        Figures.number(ChronoUnit.DAYS.between(since, told.told()) / DAYS_A_YEAR, 1) + " years old");
        Optional<String> run = told.fittedAt()
                .flatMap(at -> odometer.map(now -> now.si() - at.si()))
                .filter(metres -> metres >= 0)
                .map(metres -> figures.of(metres, Shown.DISTANCE) + " run");
        List<String> known = Stream.of(years, run).flatMap(Optional::stream).toList();
        return known.isEmpty() ? Optional.of("age not known") : Optional.of(String.join(", ", known));
    }

    PartsToBuy toBuy() {
        return new PartsToBuy(parts().stream()
                .filter(PartFinding::toBuy)
                .flatMap(part -> part
                        .price()
                        .map(price -> new PartsToBuy.Item(
                                part.part(),
                                price,
                                part.told().map(PartRecord::note).orElse(""),
                                part.told().flatMap(PartRecord::price).isEmpty()))
                        .stream())
                .toList());
    }
}
