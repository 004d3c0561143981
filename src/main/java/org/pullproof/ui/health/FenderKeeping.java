package org.pullproof.ui.health;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import org.pullproof.health.OddReading;
import org.pullproof.health.Reading;
import org.pullproof.health.TestKind;

/** Turns what is typed at a cylinder into a reading, keeps it, and finds what is kept there already. */
record FenderKeeping(
        ReadingRules rules,
        Supplier<OddReading> odd,
        FenderSetting setting,
        FenderCourse course,
        FenderReadings readings) {

    /** The test being made; a run of compression has wet readings in between. */
    TestKind kind(boolean wet) {
        return wet ? TestKind.COMPRESSION_WET : setting.test();
    }

    /** What is kept at this cylinder. */
    Optional<Reading> kept(boolean wet) {
        return course.kept(course.stop(), kind(wet));
    }

    /** The entry of what is kept at this cylinder, or an empty one. */
    FenderEntry keptOrEmpty(boolean wet) {
        return kept(wet)
                .map(reading -> FenderEntry.of(reading, wet, setting.unit()))
                .orElseGet(() -> FenderEntry.empty(wet));
    }

    /**
     * Keeps what is typed, in the place of a reading that is corrected.
     *
     * @return the entry as kept, or empty if it did not reach the disk
     * @throws IllegalArgumentException with a sentence if it cannot be read
     */
    Optional<FenderEntry> keep(FenderEntry entry) {
        Reading reading = rules.read(cells(entry));
        Optional<Reading> mistyped = entry.repeats() ? Optional.empty() : kept(entry.wet());
        mistyped.ifPresentOrElse(before -> readings.correct(before, reading), () -> readings.keep(reading));
        return readings.all().contains(reading)
                ? Optional.of(FenderEntry.of(reading, entry.wet(), setting.unit()))
                : Optional.empty();
    }

    private Map<String, String> cells(FenderEntry entry) {
        Map<String, String> cells = new LinkedHashMap<>();
        cells.put("test", kind(entry.wet()).key());
        cells.put("cylinder", String.valueOf(course.cylinder()));
        cells.put("value", setting.read(entry.text()));
        entry.first().ifPresent(first -> cells.put("first", first));
        if (setting.test() != TestKind.PLUG) {
            cells.put("round", String.valueOf(round(entry)));
        }
        cells.putAll(setting.cells(entry.wet()));
        return cells;
    }

    private int round(FenderEntry entry) {
        return entry.repeats()
                ? course.furtherRound(kind(entry.wet()))
                : kept(entry.wet())
                        .map(FenderCourse::round)
                        .orElse(course.stop().round());
    }

    /** What is odd about the reading just kept. */
    Optional<String> doubt(boolean wet) {
        List<Reading> run = course.run().readings();
        return run.stream()
                .filter(reading ->
                        reading.cylinder().equals(OptionalInt.of(course.cylinder())) && reading.test() == kind(wet))
                .reduce((one, next) -> next)
                .flatMap(just -> odd.get()
                        .of(just, run.stream().filter(other -> other != just).toList()));
    }
}
