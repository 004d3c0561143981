package org.pullproof.engine;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;

/** Engines for tests. */
final class Engines {
    private Engines() {}

    /**
     * @param banks numbers from front to rear, banks separated by {@code |}: {@code 1-3-5-7 | 2-4-6-8}
     * @param order the firing order: {@code 1-8-4-3-6-5-7-2}
     */
    static EngineProfile of(String banks, String order, Rotor rotor, List<Integer> intervals) {
        List<Bank> stood = Arrays.stream(banks.split("\\|", -1))
                .map(numbers -> new Bank(numbers.strip(), numbers(numbers), false))
                .toList();
        Layout layout = stood.size() == 1 ? Layout.INLINE : Layout.V;
        return new EngineProfile(
                "test",
                "test",
                layout,
                stood.size() == 1 ? 0 : 90,
                stood,
                new FiringOrder(numbers(order), intervals),
                rotor,
                new Geometry(0.1, 0.09, 0.15, 9, 60, true),
                new PlugSpec(
                        Quantity.of("0.9", Unit.MM),
                        Quantity.of("1.0", Unit.MM),
                        Quantity.of("20", Unit.NM),
                        Quantity.of("25", Unit.NM),
                        "14 mm"),
                rotor == Rotor.NONE ? Ignition.COIL_ON_PLUG : Ignition.DISTRIBUTOR,
                FuelSystem.CARBURETTOR,
                false,
                Known.NOT_KNOWN,
                "test",
                List.of());
    }

    static EngineProfile even(String banks, String order) {
        int cylinders = numbers(order).size();
        List<Integer> intervals =
                IntStream.range(0, cylinders).mapToObj(k -> 720 / cylinders).toList();
        return of(banks, order, Rotor.NONE, intervals);
    }

    static List<Integer> numbers(String dashed) {
        return Stream.of(dashed.strip().split("-", -1)).map(Integer::valueOf).toList();
    }
}
