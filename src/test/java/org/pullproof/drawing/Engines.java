package org.pullproof.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
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
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;

/** Invented engines of every size that is drawn. */
final class Engines {
    private Engines() {}

    static EngineProfile v8() {
        return engine(Layout.V, List.of(List.of(1, 3, 5, 7), List.of(2, 4, 6, 8)), List.of(1, 8, 4, 3, 6, 5, 7, 2));
    }

    /** One bank for in-line engines, two for the others, numbered one bank after the other. */
    static EngineProfile of(Layout layout, int cylinders) {
        List<Integer> all = IntStream.rangeClosed(1, cylinders).boxed().toList();
        if (layout == Layout.INLINE) {
            return engine(layout, List.of(all), all);
        }
        return engine(layout, List.of(all.subList(0, cylinders / 2), all.subList(cylinders / 2, cylinders)), all);
    }

    private static EngineProfile engine(Layout layout, List<List<Integer>> banks, List<Integer> order) {
        List<Bank> standing = new ArrayList<>();
        for (int i = 0; i < banks.size(); i++) {
            standing.add(new Bank(i == 0 ? "A" : "B", banks.get(i), i == 0 && banks.size() == 2));
        }
        int n = order.size();
        List<Integer> intervals = new ArrayList<>(java.util.Collections.nCopies(n, 720 / n));
        intervals.set(n - 1, 720 - 720 / n * (n - 1));
        return new EngineProfile(
                "invented",
                "invented " + n,
                layout,
                layout == Layout.V ? 90 : 0,
                standing,
                new FiringOrder(order, intervals),
                Rotor.CLOCKWISE,
                new Geometry(0.1, 0.089, 0.145, 8.5, 60, true),
                new PlugSpec(
                        Quantity.of("0.9", Unit.MM),
                        Quantity.of("1.1", Unit.MM),
                        Quantity.of("20", Unit.NM),
                        Quantity.of("28", Unit.NM),
                        "14 mm, gasket seat"),
                Ignition.DISTRIBUTOR,
                FuelSystem.CARBURETTOR,
                false,
                Known.NOT_KNOWN,
                "steps",
                List.of("invented for this test"));
    }
}
