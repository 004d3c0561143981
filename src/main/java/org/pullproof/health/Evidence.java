package org.pullproof.health;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.pullproof.car.Car;
import org.pullproof.car.CompressionRule;
import org.pullproof.car.Fact;
import org.pullproof.engine.EngineProfile;
import org.pullproof.health.balance.BalanceDrops;
import org.pullproof.health.compression.Comparison;
import org.pullproof.health.compression.CompressionRules;
import org.pullproof.health.compression.Levels;
import org.pullproof.health.compression.SeaLevel;
import org.pullproof.health.leakdown.LeakReading;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.weather.StandardAtmosphere;

/**
 * The readings that are weighed, by cylinder and test.
 *
 * @param profile the engine
 * @param chapters all readings, parted by work
 * @param comparison dry readings that compare
 * @param wet wet readings that count
 * @param leaks leak-down readings that count and say something
 * @param drops of speed
 * @param elevation of the garage in m, if told
 * @param counts the rule that calls a compression low
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
        OptionalDouble elevation,
        CompressionRule counts,
        Figures figures) {

    static Evidence of(List<Reading> readings, EngineProfile profile, Car car, Figures figures) {
        Chapters chapters = new Chapters(readings);
        SortedMap<Integer, Reading.Compression> dry =
                byCylinder(profile, chapters, own -> Repeats.compression(own, false));
        SortedMap<Integer, Reading.Leakdown> leakReadings = byCylinder(profile, chapters, Repeats::leakdown);
        return new Evidence(
                profile,
                chapters,
                Comparison.of(dry),
                dry,
                byCylinder(profile, chapters, own -> Repeats.compression(own, true)),
                leakReadings,
                leaks(leakReadings, profile, figures),
                new BalanceDrops(byCylinder(
                        profile,
                        chapters,
                        own -> Optional.of(Repeats.drops(own)).filter(rounds -> !rounds.isEmpty()))),
                car.quantity(Fact.ELEVATION).stream().mapToDouble(Quantity::si).findFirst(),
                car.compressionRule(),
                figures);
    }

    private static <T> SortedMap<Integer, T> byCylinder(
            EngineProfile profile, Chapters chapters, Function<List<Reading>, Optional<T>> counting) {
        SortedMap<Integer, T> byCylinder = new TreeMap<>();
        for (int cylinder = 1; cylinder <= profile.cylinders(); cylinder++) {
            int number = cylinder;
            counting.apply(chapters.present(number)).ifPresent(found -> byCylinder.put(number, found));
        }
        return byCylinder;
    }

    private static SortedMap<Integer, LeakReading> leaks(
            SortedMap<Integer, Reading.Leakdown> readings, EngineProfile profile, Figures figures) {
        SortedMap<Integer, LeakReading> leaks = new TreeMap<>();
        readings.forEach((cylinder, reading) ->
                LeakReading.of(reading, profile.geometry(), figures).ifPresent(leak -> leaks.put(cylinder, leak)));
        return leaks;
    }

    /** Absolute pressure of the air at a reading, Pa: as recorded, else of the standard atmosphere at the garage. */
    OptionalDouble station(Reading reading) {
        Optional<Double> recorded = reading.conditions().station().map(Quantity::si);
        return recorded.isPresent() ? OptionalDouble.of(recorded.get()) : standardStation();
    }

    private OptionalDouble standardStation() {
        return elevation.stream()
                .map(metres -> StandardAtmosphere.pressureAt(metres).pascal())
                .findFirst();
    }

    /**
     * Dry readings that the fault model weighs: those that compare, and those below their own first stroke, since it allows for
     * blunders; if none was made well (every throttle closed), all of them.
     */
    SortedMap<Integer, Reading.Compression> weighedDry() {
        SortedMap<Integer, Reading.Compression> lastStrokes = new TreeMap<>();
        dry.forEach((cylinder, reading) -> lastStrokes.put(cylinder, reading.withoutFirst()));
        Set<Integer> alike = Comparison.of(lastStrokes).alike().keySet();
        SortedMap<Integer, Reading.Compression> weighed = new TreeMap<>(dry);
        if (!alike.isEmpty()) {
            weighed.keySet().retainAll(alike);
        }
        return weighed;
    }

    /** Whether the pressure of the air at a dry reading comes from the elevation and not from a barometer. */
    boolean stationFromElevation() {
        return elevation.isPresent()
                && comparison.alike().values().stream()
                        .anyMatch(reading -> reading.conditions().station().isEmpty());
    }

    /** The rules of the trade on the dry readings that compare; empty with fewer than two. */
    Optional<CompressionRules> rules() {
        return Levels.of(comparison.pascal().values()).map(levels -> new CompressionRules(levels, toSeaLevel()));
    }

    /** Factor to sea level where the air's pressure is the same at every comparable reading; 1 where it is not known. */
    private double toSeaLevel() {
        List<OptionalDouble> stations = comparison.alike().values().stream()
                .map(this::station)
                .distinct()
                .toList();
        return stations.size() == 1 && stations.get(0).isPresent()
                ? SeaLevel.PRESSURE / stations.get(0).getAsDouble()
                : 1;
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
