package org.pullproof.health;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Readings of one test that were made in one way and are weighed: none from before work was done. Dry and wet compression are one
 * run, and how much oil was put in does not part it.
 *
 * @param readings in the order they came
 */
public record Run(List<Reading> readings) {
    public Run {
        readings = List.copyOf(readings);
    }

    /**
     * @param all readings of the session
     * @param way what was told of the run, see {@link #way}
     */
    public static Run of(List<Reading> all, TestKind test, Map<RunField, String> way) {
        Chapters chapters = new Chapters(all);
        return new Run(all.stream()
                .filter(reading -> sameTest(reading.test(), test) && alike(way(reading), way))
                .filter(reading -> isWeighed(chapters, reading))
                .toList());
    }

    private static boolean isWeighed(Chapters chapters, Reading reading) {
        OptionalInt cylinder = reading.cylinder();
        return cylinder.isPresent() && chapters.present(cylinder.getAsInt()).contains(reading);
    }

    /** Whether readings of two tests may stand in one run. */
    public static boolean sameTest(TestKind one, TestKind other) {
        return one == other || (isCompression(one) && isCompression(other));
    }

    private static boolean isCompression(TestKind test) {
        return test == TestKind.COMPRESSION_DRY || test == TestKind.COMPRESSION_WET;
    }

    private static boolean alike(Map<RunField, String> one, Map<RunField, String> other) {
        return withoutOil(one).equals(withoutOil(other));
    }

    private static Map<RunField, String> withoutOil(Map<RunField, String> way) {
        Map<RunField, String> without = new EnumMap<>(RunField.class);
        without.putAll(way);
        without.remove(RunField.OIL);
        return without;
    }

    /** How a reading was made, as far as it was recorded. */
    public static Map<RunField, String> way(Reading reading) {
        Map<RunField, String> way = new EnumMap<>(RunField.class);
        RunField.of(reading.test()).forEach(field -> field.told(reading).ifPresent(told -> way.put(field, told)));
        return way;
    }

    /** The last reading of a test, or of its dry or wet sister. */
    public static Optional<Reading> last(List<Reading> all, TestKind test) {
        return all.stream().filter(reading -> sameTest(reading.test(), test)).reduce((one, next) -> next);
    }

    /** Readings of one cylinder in a test. */
    public List<Reading> at(int cylinder, TestKind test) {
        return readings.stream()
                .filter(reading -> reading.test() == test && reading.cylinder().equals(OptionalInt.of(cylinder)))
                .toList();
    }
}
