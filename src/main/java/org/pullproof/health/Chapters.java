package org.pullproof.health;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * Readings parted by work done: what a cylinder (or the engine) read before the last work on it is shown as before and never
 * weighed. The order of the list is the order of the readings in time.
 *
 * @param readings all readings of the session
 */
record Chapters(List<Reading> readings) {
    Chapters {
        readings = List.copyOf(readings);
    }

    /** Readings of one cylinder that are weighed, in order; work itself is none. */
    List<Reading> present(int cylinder) {
        return of(cylinder, lastWorkOn(OptionalInt.of(cylinder)), readings.size());
    }

    /** Readings of one cylinder from before the last work on it or on the whole engine. */
    List<Reading> before(int cylinder) {
        return of(cylinder, -1, lastWorkOn(OptionalInt.of(cylinder)));
    }

    /** Readings of the whole engine that are weighed, in order. */
    List<Reading> ofEngine() {
        return IntStream.range(lastWorkOn(OptionalInt.empty()) + 1, readings.size())
                .mapToObj(readings::get)
                .filter(reading -> reading.cylinder().isEmpty() && reading.test() != TestKind.WORK)
                .toList();
    }

    /** The last work that closed a chapter of this cylinder, if any. */
    Optional<Reading.Work> lastWork(int cylinder) {
        int index = lastWorkOn(OptionalInt.of(cylinder));
        return index < 0 ? Optional.empty() : Optional.of((Reading.Work) readings.get(index));
    }

    private List<Reading> of(int cylinder, int after, int until) {
        return IntStream.range(after + 1, until)
                .mapToObj(readings::get)
                .filter(reading -> reading.cylinder().equals(OptionalInt.of(cylinder)))
                .filter(reading -> reading.test() != TestKind.WORK)
                .toList();
    }

    /** Index of the last work on that cylinder or on the whole engine, −1 if none. */
    private int lastWorkOn(OptionalInt cylinder) {
        return IntStream.range(0, readings.size())
                .filter(index -> readings.get(index) instanceof Reading.Work work
                        && (work.cylinder().isEmpty() || work.cylinder().equals(cylinder)))
                .max()
                .orElse(-1);
    }
}
