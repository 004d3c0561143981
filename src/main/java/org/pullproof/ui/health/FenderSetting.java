package org.pullproof.ui.health;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.pullproof.engine.EngineProfile;
import org.pullproof.health.Reading;
import org.pullproof.health.Run;
import org.pullproof.health.RunField;
import org.pullproof.health.TestKind;
import org.pullproof.health.Words;
import org.pullproof.units.Unit;
import org.pullproof.units.UnitSystem;

/**
 * What is told once before a run of readings: the test, how it is made, and what the tester shows. It begins with how the last
 * run of that test was made today, because a run that was broken off goes on; else only gauge and reader are remembered.
 */
public final class FenderSetting {
    /** The tests there is fender mode for, in the order of the job. */
    public static final List<TestKind> TESTS = List.of(
            TestKind.BALANCE, TestKind.COMPRESSION_DRY, TestKind.COMPRESSION_WET, TestKind.PLUG, TestKind.LEAKDOWN);

    private static final Set<RunField> SAME_ANOTHER_DAY = Set.of(RunField.GAUGE, RunField.GAUGE_STEP, RunField.WHO);

    private final ReadingEntry entry;
    private final Supplier<UnitSystem> units;
    private final ReadingRules rules;
    private LeakShown leakShown = LeakShown.PERCENT;

    FenderSetting(Supplier<EngineProfile> engine, Supplier<UnitSystem> units, ReadingRules rules) {
        this.units = units;
        this.rules = rules;
        this.entry = new ReadingEntry(engine, units);
    }

    /** Begins anew with a test. */
    void begin(TestKind test, List<Reading> all, LocalDate today) {
        entry.testProperty().set(test);
        for (RunField field : RunField.values()) {
            entry.put(EntryColumn.of(field), "");
        }
        Run.last(all, test).ifPresent(last -> remember(last, today));
    }

    private void remember(Reading last, LocalDate today) {
        boolean sameDay = last.time().toLocalDate().equals(today);
        Run.way(last).forEach((field, told) -> {
            if (sameDay || SAME_ANOTHER_DAY.contains(field)) {
                entry.put(EntryColumn.of(field), told);
            }
        });
        if (sameDay && last instanceof Reading.Leakdown leakdown) {
            leakShown = shown(leakdown.value());
        }
    }

    private static LeakShown shown(Reading.Leak leak) {
        if (leak instanceof Reading.Leak.Zone) {
            return LeakShown.ZONES;
        }
        return leak instanceof Reading.Leak.Behind ? LeakShown.PRESSURE : LeakShown.PERCENT;
    }

    public TestKind test() {
        return entry.testProperty().get();
    }

    /** What is asked of this test. */
    public List<RunField> fields() {
        return RunField.of(test());
    }

    /** The unit a bare figure of a field takes, or empty words. */
    public String unitWords(RunField field) {
        return entry.unitWords(EntryColumn.of(field));
    }

    public String text(RunField field) {
        return entry.text(EntryColumn.of(field));
    }

    /**
     * Reads what was typed as it will be recorded.
     *
     * @throws IllegalArgumentException with a sentence if it cannot be read
     */
    public String read(RunField field, String typed) {
        String text = entry.read(EntryColumn.of(field), typed);
        rules.read(example(field, text));
        return text;
    }

    /** A reading that could be made so: the rules are asked before the first real one. */
    private Map<String, String> example(RunField field, String text) {
        TestKind kind = field == RunField.OIL ? TestKind.COMPRESSION_WET : test();
        String value = switch (kind) {
            case BALANCE -> "60 rpm";
            case LEAKDOWN -> "10 %";
            case PLUG -> "normal";
            default -> "150 psi";
        };
        return Map.of("test", kind.key(), "cylinder", "1", "value", value, field.key(), text);
    }

    public void put(RunField field, String text) {
        entry.put(EntryColumn.of(field), text);
    }

    public LeakShown leakShown() {
        return leakShown;
    }

    public void showLeakAs(LeakShown shown) {
        leakShown = shown;
    }

    /** How the run is made, as far as it was told. */
    Map<RunField, String> way() {
        Map<RunField, String> way = new EnumMap<>(RunField.class);
        fields().stream().filter(field -> !text(field).isEmpty()).forEach(field -> way.put(field, text(field)));
        return way;
    }

    /** The words a reading is answered with by their number; empty where figures are typed. */
    List<String> choices() {
        return test() == TestKind.LEAKDOWN ? leakShown.choices() : Words.of(test());
    }

    /** The unit that stands beside the one field. */
    Optional<Unit> unit() {
        return test() == TestKind.LEAKDOWN ? leakShown.unit(units.get()) : EntryColumn.VALUE.unit(test(), units.get());
    }

    String unitWords() {
        return unit().map(Unit::symbol).orElse("");
    }

    /** A figure or word as it will be recorded. */
    String read(String typed) {
        return test() == TestKind.LEAKDOWN ? leakShown.read(typed, units.get()) : entry.read(EntryColumn.VALUE, typed);
    }

    /** The row of a table of readings that says how a reading is made. */
    Map<String, String> cells(boolean wet) {
        Map<String, String> cells = new LinkedHashMap<>();
        way().forEach((field, text) -> {
            if (field != RunField.OIL || wet) {
                cells.put(field.key(), text);
            }
        });
        return cells;
    }

    /** How the run is made in a few words: "6 strokes · throttle open · all plugs out". */
    String words() {
        return fields().stream()
                .map(field -> words(field, text(field)))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(" · "));
    }

    private static Optional<String> words(RunField field, String text) {
        String told = text.replace(' ', '\u00a0').replace('-', ' ');
        String words = switch (field) {
            case STROKES -> told + " strokes";
            case THROTTLE -> "throttle " + told;
            case PLUGS -> text.equals("all-out") ? "all plugs out" : "one plug out";
            case ENGINE -> "engine " + told;
            case GAUGE -> "gauge " + text;
            case GAUGE_STEP -> "steps of " + told;
            case STATION -> "air " + told;
            case OIL -> told + " of oil";
            case SUPPLY -> "supply " + told;
            case ORIFICE -> "restrictor " + told;
            case CLOSED -> told + " with the hose closed";
            case WHO -> "read by " + text;
            case NOTE -> text;
            case CRANKING_VOLTS, CRANKING_RPM -> told;
        };
        return text.isEmpty() ? Optional.empty() : Optional.of(words);
    }
}
