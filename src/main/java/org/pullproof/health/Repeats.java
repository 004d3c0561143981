package org.pullproof.health;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Which of several readings of one test on one cylinder counts: the last, by time, then round, then order. */
final class Repeats {
    private Repeats() {}

    static Optional<Reading.Compression> compression(List<Reading> readings, boolean wet) {
        return last(compressions(readings, wet), Comparator.comparingInt(Reading.Compression::round));
    }

    static Optional<Reading.Leakdown> leakdown(List<Reading> readings) {
        return last(of(readings, Reading.Leakdown.class), Comparator.comparingInt(Reading.Leakdown::round));
    }

    static Optional<Reading.Sign> sign(List<Reading> readings, Predicate<Reading.Sign> wanted) {
        return last(
                of(readings, Reading.Sign.class).stream().filter(wanted).toList(), Comparator.comparingInt(sign -> 0));
    }

    static List<Double> drops(List<Reading> readings) {
        return of(readings, Reading.Balance.class).stream()
                .map(reading -> reading.drop().si())
                .sorted()
                .toList();
    }

    /**
     * Whether repeats of the dry reading disagree: the one that counts lies further from every other one, made with the same
     * strokes, than the limit.
     */
    static boolean disagree(List<Reading> readings, double limitPercent) {
        return compression(readings, false)
                .map(counts -> {
                    List<Reading.Compression> others = othersWithItsStrokes(readings, counts);
                    return !others.isEmpty() && others.stream().allMatch(other -> apart(other, counts) > limitPercent);
                })
                .orElse(false);
    }

    private static List<Reading.Compression> othersWithItsStrokes(List<Reading> readings, Reading.Compression counts) {
        List<Reading.Compression> others = new ArrayList<>(compressions(readings, false));
        others.remove(counts);
        return others.stream()
                .filter(other ->
                        other.conditions().strokes().equals(counts.conditions().strokes()))
                .toList();
    }

    private static double apart(Reading.Compression one, Reading.Compression other) {
        double larger = Math.max(one.gauge().si(), other.gauge().si());
        return larger == 0 ? 0 : 100 * Math.abs(one.gauge().si() - other.gauge().si()) / larger;
    }

    private static List<Reading.Compression> compressions(List<Reading> readings, boolean wet) {
        return of(readings, Reading.Compression.class).stream()
                .filter(reading -> reading.wet() == wet)
                .toList();
    }

    private static <R extends Reading> List<R> of(List<Reading> readings, Class<R> kind) {
        return readings.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /** Of equal ones the later in the list. */
    private static <R extends Reading> Optional<R> last(List<R> readings, Comparator<R> byRound) {
        Comparator<R> order = Comparator.comparing(Reading::time);
        return readings.stream()
                .reduce((one, next) -> order.thenComparing(byRound).compare(next, one) >= 0 ? next : one);
    }
}
