package org.pullproof.changes;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.pullproof.engine.Setup;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;

/**
 * Setups that differ in one numeric setting and in nothing else that is recorded.
 *
 * @param factor name of the setting
 * @param unit that of its first level
 * @param setups the setups, each with a level
 */
record SweepGroup(String factor, Unit unit, List<Setup> setups) {
    /** Fewer levels show no bend. */
    private static final int FEWEST_LEVELS = 3;

    SweepGroup {
        setups = List.copyOf(setups);
    }

    /**
     * The sweeps among these setups. Setups belong together if they have the same other levels and the same setup without that
     * setting behind them: a new filter between two timings begins another sweep.
     */
    static List<SweepGroup> among(List<Setup> setups, List<Change> changes) {
        Set<String> factors = new LinkedHashSet<>();
        setups.forEach(setup -> factors.addAll(new TreeMap<>(setup.levels()).keySet()));
        return factors.stream()
                .flatMap(factor -> groups(factor, setups, changes).stream())
                .filter(group -> group.levels() >= FEWEST_LEVELS)
                .toList();
    }

    private static List<SweepGroup> groups(String factor, List<Setup> setups, List<Change> changes) {
        Map<List<Object>, List<Setup>> alike = new LinkedHashMap<>();
        for (Setup setup : setups) {
            if (setup.levels().containsKey(factor)) {
                List<Object> rest = List.of(
                        level(setup, factor).dimension(),
                        others(setup, factor),
                        behind(setup, factor, setups, changes));
                alike.computeIfAbsent(rest, key -> new ArrayList<>()).add(setup);
            }
        }
        return alike.values().stream()
                .map(group -> new SweepGroup(factor, level(group.get(0), factor).unit(), group))
                .toList();
    }

    private static Map<String, Quantity> others(Setup setup, String factor) {
        Map<String, Quantity> others = new TreeMap<>(setup.levels());
        others.remove(factor);
        return others;
    }

    /** The nearest setup it was made from that has no level of the setting; empty if there is none. */
    private static Optional<String> behind(Setup setup, String factor, List<Setup> setups, List<Change> changes) {
        List<String> made = setups.stream().map(Setup::id).toList();
        Optional<String> from = Comparison.madeBy(setup.id(), made, changes).map(Change::from);
        Optional<Setup> parent = from.flatMap(
                id -> setups.stream().filter(other -> other.id().equals(id)).findFirst());
        return parent.flatMap(other ->
                other.levels().containsKey(factor) ? behind(other, factor, setups, changes) : Optional.of(other.id()));
    }

    private static Quantity level(Setup setup, String factor) {
        return Objects.requireNonNull(setup.levels().get(factor));
    }

    /** The level of a setup in the sweep's unit. */
    double level(Setup setup) {
        return level(setup, factor).in(unit);
    }

    /** The last digit that levels were typed with: 1 for whole degrees. */
    double resolution() {
        int places = setups.stream()
                .mapToInt(setup -> Math.max(0, level(setup, factor).figure().scale()))
                .max()
                .orElse(0);
        return Math.pow(10, -places);
    }

    /** Only those setups. */
    SweepGroup only(Set<String> ids) {
        return new SweepGroup(
                factor,
                unit,
                setups.stream().filter(setup -> ids.contains(setup.id())).toList());
    }

    long levels() {
        return setups.stream().mapToDouble(this::level).distinct().count();
    }

    /** Whether this is spark timing, whose curvature is known beforehand and whose lesser advance is the safer one. */
    boolean isTiming() {
        String name = factor.toLowerCase(Locale.ROOT);
        boolean spark = name.contains("timing")
                || name.contains("advance")
                || name.contains("spark")
                || name.contains("ignition");
        return unit == Unit.DEGREE && spark && !name.contains("cam") && !name.contains("inj");
    }
}
