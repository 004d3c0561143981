package org.pullproof.health.compression;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.pullproof.health.Conditions;
import org.pullproof.health.Conditions.Plugs;
import org.pullproof.health.Conditions.Throttle;
import org.pullproof.health.Phrase;
import org.pullproof.health.Reading;

/**
 * Which dry readings may be compared: those with the throttle open, all plugs out, the same count of strokes and the same
 * gauge (Army TM 5-4210-230-14&amp;P-1, Addendum 2, asks for throttle, plugs and strokes [P]; the same gauge is common practice).
 *
 * @param alike readings that compare, by cylinder
 * @param whyNot a few words on each reading that does not: "4 strokes, the others 6"
 * @param takenAsAlike what was not recorded and is taken as made alike, one sentence each
 */
public record Comparison(
        SortedMap<Integer, Reading.Compression> alike, SortedMap<Integer, String> whyNot, List<String> takenAsAlike) {
    public Comparison {
        alike = Collections.unmodifiableSortedMap(new TreeMap<>(alike));
        whyNot = Collections.unmodifiableSortedMap(new TreeMap<>(whyNot));
        takenAsAlike = List.copyOf(takenAsAlike);
    }

    /** A condition that must be the same; the value as people read it. */
    private record Field(String name, Function<Conditions, Optional<String>> value) {}

    private static final Field STROKES = new Field(
            "strokes",
            how -> how.strokes().isPresent() ? Optional.of(how.strokes().getAsInt() + " strokes") : Optional.empty());
    private static final Field THROTTLE =
            new Field("throttle", how -> how.throttle().map(at -> at == Throttle.OPEN ? "open" : "throttle closed"));
    private static final Field PLUGS =
            new Field("plugs", how -> how.plugs().map(out -> out == Plugs.ALL_OUT ? "all out" : "only one plug out"));
    private static final Field GAUGE = new Field("gauge", how -> how.gauge().map(name -> "gauge " + name));

    /**
     * Compares the readings that count, one a cylinder. Where strokes or gauge differ, the larger group compares; of two equal
     * groups the one with more strokes, or the gauge first in the alphabet.
     */
    public static Comparison of(Map<Integer, Reading.Compression> dry) {
        SortedMap<Integer, Reading.Compression> alike = new TreeMap<>(dry);
        SortedMap<Integer, String> whyNot = new TreeMap<>();
        leaveOutImpossible(alike, whyNot);
        leaveOut(alike, whyNot, THROTTLE, "open");
        leaveOut(alike, whyNot, PLUGS, "all out");
        leaveOutTheSmallerGroups(alike, whyNot, STROKES, Comparator.comparingInt(Comparison::leadingFigure));
        leaveOutTheSmallerGroups(alike, whyNot, GAUGE, Comparator.reverseOrder());
        return new Comparison(alike, whyNot, notRecorded(alike));
    }

    /** A gauge keeps its highest reading, so the last stroke never shows less than the first. */
    private static void leaveOutImpossible(SortedMap<Integer, Reading.Compression> alike, Map<Integer, String> whyNot) {
        List.copyOf(alike.values()).stream()
                .filter(reading -> reading.first()
                        .filter(first -> first.si() > reading.gauge().si())
                        .isPresent())
                .forEach(reading -> reading.cylinder().ifPresent(cylinder -> {
                    whyNot.put(cylinder, "less than its own first stroke");
                    alike.remove(cylinder);
                }));
    }

    private static void leaveOut(
            SortedMap<Integer, Reading.Compression> alike, Map<Integer, String> whyNot, Field field, String wanted) {
        List.copyOf(alike.keySet())
                .forEach(cylinder -> valueOf(alike, field, cylinder)
                        .filter(value -> !value.equals(wanted))
                        .ifPresent(value -> {
                            whyNot.put(cylinder, value);
                            alike.remove(cylinder);
                        }));
    }

    private static Optional<String> valueOf(
            SortedMap<Integer, Reading.Compression> alike, Field field, Integer cylinder) {
        return Optional.ofNullable(alike.get(cylinder))
                .flatMap(reading -> field.value().apply(reading.conditions()));
    }

    private static void leaveOutTheSmallerGroups(
            SortedMap<Integer, Reading.Compression> alike,
            Map<Integer, String> whyNot,
            Field field,
            Comparator<String> preferred) {
        Map<String, Long> groups = alike.values().stream()
                .flatMap(reading -> field.value().apply(reading.conditions()).stream())
                .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        Optional<String> largest = groups.keySet().stream()
                .max(Comparator.<String>comparingLong(value -> groups.getOrDefault(value, 0L))
                        .thenComparing(preferred));
        if (largest.isPresent()) {
            leaveOut(alike, whyNot, field, largest.get());
            whyNot.replaceAll((cylinder, value) ->
                    groups.containsKey(value) ? value + ", the others " + shortened(largest.get()) : value);
        }
    }

    private static String shortened(String value) {
        return value.replaceAll(" strokes$", "");
    }

    private static int leadingFigure(String value) {
        return Integer.parseInt(value.replaceAll("\\D.*", ""));
    }

    private static List<String> notRecorded(SortedMap<Integer, Reading.Compression> alike) {
        List<String> nowhere = new ArrayList<>();
        List<String> sentences = new ArrayList<>();
        for (Field field : List.of(STROKES, THROTTLE, PLUGS, GAUGE)) {
            List<Integer> silent = alike.keySet().stream()
                    .filter(cylinder -> valueOf(alike, field, cylinder).isEmpty())
                    .toList();
            if (silent.size() == alike.size()) {
                nowhere.add(field.name());
            } else if (!silent.isEmpty()) {
                sentences.add(Phrase.capital(field.name()) + " not recorded on " + Phrase.cylinders(silent)
                        + "; taken as made like the others.");
            }
        }
        if (alike.size() > 1 && !nowhere.isEmpty()) {
            sentences.add(
                    0,
                    Phrase.capital(Phrase.list(nowhere))
                            + " not recorded with the compression readings; taken as made alike.");
        }
        return sentences;
    }

    /** Gauge readings that compare, Pa over the surroundings, by cylinder. */
    public SortedMap<Integer, Double> pascal() {
        SortedMap<Integer, Double> readings = new TreeMap<>();
        alike.forEach(
                (cylinder, reading) -> readings.put(cylinder, reading.gauge().si()));
        return readings;
    }

    /** (highest − lowest)/highest in percent; empty with fewer than two readings or none above zero. */
    public OptionalDouble spreadPercent() {
        return Levels.of(pascal().values())
                .map(Levels::spreadPercent)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }
}
