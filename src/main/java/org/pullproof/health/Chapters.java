package org.pullproof.health;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Readings parted by work done: what a cylinder (or the engine) read before work that can have changed it is shown as before and
 * never weighed. The order of the list is the order of the readings in time.
 *
 * @param readings all readings of the session
 */
record Chapters(List<Reading> readings) {
    Chapters {
        readings = List.copyOf(readings);
    }

    /**
     * A reading that is no longer weighed.
     *
     * @param reading as it was
     * @param work the last work that closed its chapter
     */
    record Closed(Reading reading, Reading.Work work) {}

    /** Readings of one cylinder that are weighed, in order; work itself is none. */
    List<Reading> present(int cylinder) {
        return open(reading -> reading.cylinder().equals(OptionalInt.of(cylinder)));
    }

    /** Readings of the whole engine that are weighed, in order. */
    List<Reading> ofEngine() {
        return open(reading -> reading.cylinder().isEmpty());
    }

    private List<Reading> open(Predicate<Reading> which) {
        return IntStream.range(0, readings.size())
                .filter(index ->
                        which.test(readings.get(index)) && closedBy(index).isEmpty())
                .mapToObj(readings::get)
                .filter(reading -> reading.test() != TestKind.WORK)
                .toList();
    }

    /** Readings of one cylinder from before work on it or on the whole engine, in order. */
    List<Closed> before(int cylinder) {
        return IntStream.range(0, readings.size())
                .filter(index -> readings.get(index).cylinder().equals(OptionalInt.of(cylinder)))
                .filter(index -> readings.get(index).test() != TestKind.WORK)
                .boxed()
                .flatMap(index -> closedBy(index).map(work -> new Closed(readings.get(index), work)).stream())
                .toList();
    }

    /** The last work after a reading that can have changed what it would read now. */
    private Optional<Reading.Work> closedBy(int index) {
        Reading reading = readings.get(index);
        return readings.subList(index + 1, readings.size()).stream()
                .flatMap(later -> later instanceof Reading.Work work ? Stream.of(work) : Stream.empty())
                .filter(work -> concerns(work, reading) && WorkReach.changes(work.what(), reading.test()))
                .reduce((first, last) -> last);
    }

    private static boolean concerns(Reading.Work work, Reading reading) {
        return work.cylinder().isEmpty() || work.cylinder().equals(reading.cylinder());
    }
}
