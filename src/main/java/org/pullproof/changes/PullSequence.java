package org.pullproof.changes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.pullproof.dyno.PowerCurve;
import org.pullproof.dyno.PullFindings;

/**
 * The pulls that count, in order of time, as the fit takes them. Clock and blocks are numbered over all pulls, so one that does
 * not count leaves its place empty. Changing the setup or the day begins a block.
 *
 * @param entries the pulls that count
 * @param settings ids of their setups in order of first appearance; the place in this list is the number in the fit
 * @param basis which figure of a pull is compared
 */
record PullSequence(List<Entry> entries, List<String> settings, Basis basis) {
    PullSequence {
        entries = List.copyOf(entries);
        settings = List.copyOf(settings);
    }

    /** A pull and what the fit sees of it. */
    record Entry(PullFindings pull, Observation observation) {
        String setup() {
            return pull.pull().setup();
        }
    }

    /**
     * @param all every pull in order of time
     * @param wanted which of those that count are taken
     * @param basis which figure to take
     */
    static PullSequence of(List<PullFindings> all, Predicate<PullFindings> wanted, Basis basis) {
        Numbering numbering = new Numbering();
        List<Entry> entries = new ArrayList<>();
        for (PullFindings pull : all) {
            numbering.next(pull);
            if (basis.counts(pull) && wanted.test(pull)) {
                entries.add(new Entry(
                        pull,
                        numbering.observe(
                                pull, 100 * Math.log(basis.kilowatt(pull).orElseThrow()))));
            }
        }
        return new PullSequence(entries, List.copyOf(numbering.settings.keySet()), basis);
    }

    List<Observation> observations() {
        return entries.stream().map(Entry::observation).toList();
    }

    int number(String setup) {
        return settings.indexOf(setup);
    }

    boolean has(String setup) {
        return settings.contains(setup);
    }

    List<PullFindings> pullsOf(String setup) {
        return entries.stream()
                .filter(entry -> entry.setup().equals(setup))
                .map(Entry::pull)
                .toList();
    }

    /** Mean of 100·ln(power) in each run of pulls on a setup, in order. */
    List<Double> blocksOf(String setup) {
        Map<Integer, List<Entry>> runs = entries.stream()
                .filter(entry -> entry.setup().equals(setup))
                .collect(Collectors.groupingBy(
                        entry -> entry.observation().block(), LinkedHashMap::new, Collectors.toList()));
        return runs.values().stream()
                .map(run -> run.stream()
                        .mapToDouble(entry -> entry.observation().y())
                        .average()
                        .orElseThrow())
                .toList();
    }

    /** Mean band power of a setup's pulls, kW. */
    double meanKilowatt(String setup) {
        return pullsOf(setup).stream()
                .mapToDouble(pull -> basis.kilowatt(pull).orElseThrow())
                .average()
                .orElseThrow();
    }

    /** The multiples of a step that every curve reaches, rpm; none without pulls. */
    int[] commonGrid(int step) {
        List<PowerCurve> curves =
                entries.stream().map(entry -> entry.pull().curve()).toList();
        if (curves.stream().anyMatch(curve -> curve.size() == 0)) {
            return new int[0];
        }
        double from = curves.stream().mapToInt(curve -> curve.rpm(0)).max().orElse(0);
        double to = curves.stream()
                .mapToInt(curve -> curve.rpm(curve.size() - 1))
                .min()
                .orElse(-1);
        return IntStream.rangeClosed((int) Math.ceil(from / step), (int) Math.floor(to / step))
                .map(multiple -> multiple * step)
                .toArray();
    }

    /** 100·ln(power) of each pull at these speeds, on the figure that is compared. */
    double[][] curves(int[] rpm) {
        return entries.stream()
                .map(entry -> Arrays.stream(rpm)
                        .mapToDouble(speed -> 100 * Math.log(kilowattAt(entry.pull(), speed)))
                        .toArray())
                .toArray(double[][]::new);
    }

    /** Power of the smoothed curve, times what the band power is multiplied by, kW; at least a watt, so that it has a logarithm. */
    private double kilowattAt(PullFindings pull, int rpm) {
        double factor =
                basis.kilowatt(pull).orElseThrow() / pull.bandMeasuredKw().orElseThrow();
        return Math.max(1e-3, pull.curve().wattAt(rpm) / 1e3 * factor);
    }

    /** Whether two setups have pulls on one common day. */
    boolean shareADay(String one, String other) {
        return daysOf(one).stream().anyMatch(daysOf(other)::contains);
    }

    /** Whether a chain of setups, each sharing a day with the next, leads from one to the other. */
    boolean linked(String one, String other) {
        Set<String> reached = new LinkedHashSet<>(List.of(one));
        boolean grew = true;
        while (grew) {
            grew = reached.addAll(settings.stream()
                    .filter(setup -> reached.stream().anyMatch(known -> shareADay(known, setup)))
                    .toList());
        }
        return reached.contains(other);
    }

    private Set<LocalDate> daysOf(String setup) {
        return pullsOf(setup).stream()
                .map(pull -> pull.pull().time().toLocalDate())
                .collect(Collectors.toSet());
    }

    /** Counts days, pulls and blocks while it walks over the pulls. */
    private static final class Numbering {
        private final Map<String, Integer> settings = new LinkedHashMap<>();
        private final Map<LocalDate, Integer> days = new LinkedHashMap<>();
        private String setup = "";
        private LocalDate day = LocalDate.MIN;
        private int clock;
        private int block;

        void next(PullFindings pull) {
            LocalDate itsDay = pull.pull().time().toLocalDate();
            boolean sameDay = itsDay.equals(day);
            if (!sameDay || !pull.pull().setup().equals(setup)) {
                block++;
            }
            clock = sameDay ? clock + 1 : 1;
            day = itsDay;
            setup = pull.pull().setup();
        }

        Observation observe(PullFindings pull, double y) {
            int setting = settings.computeIfAbsent(pull.pull().setup(), id -> settings.size());
            int dayNumber = days.computeIfAbsent(day, date -> days.size());
            return new Observation(dayNumber, clock, block, setting, y);
        }
    }
}
