package org.pullproof.health;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.pullproof.engine.EngineProfile;
import org.pullproof.health.balance.BalanceDrops;
import org.pullproof.health.compression.Comparison;
import org.pullproof.health.leakdown.LeakReading;
import org.pullproof.units.Figures;

/**
 * The readings that are weighed, by cylinder and test.
 *
 * @param profile the engine
 * @param chapters all readings, parted by work
 * @param comparison dry readings that compare
 * @param wet wet readings that count
 * @param leaks leak-down readings that count and say something
 * @param drops of speed
 * @param figures how figures are written
 */
record Evidence(
        EngineProfile profile,
        Chapters chapters,
        Comparison comparison,
        SortedMap<Integer, Reading.Compression> dry,
        SortedMap<Integer, Reading.Compression> wet,
        SortedMap<Integer, Reading.Leakdown> leakReadings,
        SortedMap<Integer, LeakReading> leaks,
        BalanceDrops drops,
        Figures figures) {

    static Evidence of(List<Reading> readings, EngineProfile profile, Figures figures) {
        Chapters chapters = new Chapters(readings);
        SortedMap<Integer, Reading.Compression> dry = new TreeMap<>();
        SortedMap<Integer, Reading.Compression> wet = new TreeMap<>();
        SortedMap<Integer, Reading.Leakdown> leakReadings = new TreeMap<>();
        SortedMap<Integer, LeakReading> leaks = new TreeMap<>();
        SortedMap<Integer, List<Double>> drops = new TreeMap<>();
        for (int cylinder = 1; cylinder <= profile.cylinders(); cylinder++) {
            int number = cylinder;
            List<Reading> own = chapters.present(number);
            Repeats.compression(own, false).ifPresent(reading -> dry.put(number, reading));
            Repeats.compression(own, true).ifPresent(reading -> wet.put(number, reading));
            Repeats.leakdown(own).ifPresent(reading -> leakReadings.put(number, reading));
            List<Double> rounds = Repeats.drops(own);
            if (!rounds.isEmpty()) {
                drops.put(number, rounds);
            }
        }
        leakReadings.forEach((cylinder, reading) ->
                LeakReading.of(reading, profile.geometry(), figures).ifPresent(leak -> leaks.put(cylinder, leak)));
        return new Evidence(
                profile, chapters, Comparison.of(dry), dry, wet, leakReadings, leaks, new BalanceDrops(drops), figures);
    }

    List<Integer> cylinders() {
        return IntStream.rangeClosed(1, profile.cylinders()).boxed().toList();
    }

    /** The sign of one test on one cylinder that counts. */
    Optional<Reading.Sign> sign(int cylinder, TestKind test) {
        return Repeats.sign(chapters.present(cylinder), sign -> sign.test() == test);
    }

    Optional<String> word(int cylinder, TestKind test) {
        return sign(cylinder, test).flatMap(Reading.Sign::word);
    }

    /** Signs of the whole engine, the last of each kind; of observations the last of each word. */
    List<Reading.Sign> engineSigns() {
        List<Reading.Sign> last = new ArrayList<>();
        List<Reading> readings = chapters.ofEngine();
        for (TestKind test : TestKind.values()) {
            if (test == TestKind.OBSERVATION) {
                last.addAll(observations(readings));
            } else {
                Repeats.sign(readings, sign -> sign.test() == test).ifPresent(last::add);
            }
        }
        return last;
    }

    private static List<Reading.Sign> observations(List<Reading> readings) {
        List<Reading.Sign> last = new ArrayList<>();
        for (String word : Words.of(TestKind.OBSERVATION)) {
            Repeats.sign(
                            readings,
                            sign -> sign.test() == TestKind.OBSERVATION
                                    && sign.word().equals(Optional.of(word)))
                    .ifPresent(last::add);
        }
        return withoutOverruledKnock(last, readings);
    }

    /** Knock heard and no knock heard rule each other out: the later counts. */
    private static List<Reading.Sign> withoutOverruledKnock(List<Reading.Sign> signs, List<Reading> readings) {
        Optional<Reading.Sign> counts = Repeats.sign(readings, Evidence::ofKnock);
        signs.removeIf(sign -> ofKnock(sign) && !sign.equals(counts.orElse(sign)));
        return List.copyOf(signs);
    }

    private static boolean ofKnock(Reading.Sign sign) {
        return sign.word()
                .map(word -> word.endsWith("knock-at-2500") || word.equals("no-knock"))
                .orElse(false);
    }
}
