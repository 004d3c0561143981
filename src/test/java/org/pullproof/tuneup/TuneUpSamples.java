package org.pullproof.tuneup;

import java.time.LocalDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.pullproof.engine.Bank;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.FiringOrder;
import org.pullproof.engine.FuelSystem;
import org.pullproof.engine.Geometry;
import org.pullproof.engine.Ignition;
import org.pullproof.engine.Known;
import org.pullproof.engine.Layout;
import org.pullproof.engine.PlugSpec;
import org.pullproof.engine.Rotor;
import org.pullproof.units.Money;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;

/** Invented engines and tune-ups for tests. */
public final class TuneUpSamples {
    public static final LocalDateTime WHEN = LocalDateTime.of(2026, 6, 14, 13, 40);

    private TuneUpSamples() {}

    /** An invented in-line four whose tune-up has this id. */
    public static EngineProfile engine(String steps) {
        return new EngineProfile(
                "invented",
                "In-line 4",
                Layout.INLINE,
                0,
                List.of(new Bank("one", List.of(1, 2, 3, 4), false)),
                new FiringOrder(List.of(1, 3, 4, 2), List.of(180, 180, 180, 180)),
                Rotor.NONE,
                new Geometry(0.086, 0.086, 0.145, 10, 50, true),
                new PlugSpec(
                        Quantity.parse("0.035in", Unit.IN),
                        Quantity.parse("0.045in", Unit.IN),
                        Quantity.parse("18lb-ft", Unit.LB_FT),
                        Quantity.parse("22lb-ft", Unit.LB_FT),
                        "14 mm, gasket seat"),
                Ignition.COIL_ON_PLUG,
                FuelSystem.PORT_INJECTION,
                false,
                Known.NOT_KNOWN,
                steps,
                List.of());
    }

    public static Step step(String id, Step.Kind kind, List<String> needs, List<String> off, List<String> putsBack) {
        return new Step(
                id,
                "Step " + id,
                needs,
                List.of(),
                off,
                putsBack,
                off,
                10,
                Money.of(0, "USD"),
                List.of(),
                Step.Heat.ANY,
                kind,
                Outfit.NONE);
    }

    public static TuneUp tick(StepGraph graph, TuneUp tuneUp, String step) {
        return new Ticking(graph).tick(tuneUp, step, WHEN);
    }

    /** Says of every part and check that it is back. */
    public static TuneUp allBack(StepGraph graph, TuneUp tuneUp) {
        TuneUp next = tuneUp;
        List<String> parts = graph.steps().stream()
                .flatMap(step -> Stream.concat(step.takesOff().stream(), step.backBeforeStart().stream()))
                .toList();
        for (String part : parts) {
            next = next.withBack(part);
        }
        return next;
    }

    /** Ticks one step and, before it, all that it needs and nothing else; parts are back before each tick. */
    public static TuneUp upTo(StepGraph graph, String last) {
        Set<String> wanted = new HashSet<>(List.of(last));
        for (int i = graph.steps().size() - 1; i >= 0; i--) {
            Step step = graph.steps().get(i);
            wanted.addAll(wanted.contains(step.id()) ? step.needs() : List.of());
            wanted.addAll(wanted.contains(step.id()) ? step.after() : List.of());
        }
        TuneUp tuneUp = TuneUp.notBegun();
        for (Step step : graph.steps()) {
            tuneUp = wanted.contains(step.id()) ? tick(graph, allBack(graph, tuneUp), step.id()) : tuneUp;
        }
        return tuneUp;
    }
}
