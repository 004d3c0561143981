package org.pullproof.dyno;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * The other pulls that one is held against. What is usual among them is their median where there are three or more; of two, the first
 * is what the second is held against, for no one can tell which of the two is off.
 */
final class Company {
    private final List<Judged> all;
    private final Map<String, List<Judged>> bySetup;
    private final Map<LocalDate, List<Judged>> byDay;
    private final Map<Asked, Usual> usual = new HashMap<>();
    private final Map<LocalDate, OptionalDouble> widest = new HashMap<>();

    /** What was asked before: thousands of pulls of a setup ask the same. */
    private record Asked(Object group, Figured figure) {}

    /**
     * What is usual in a group.
     *
     * @param telling the pulls that tell it
     * @param first the first of them, if there is one
     * @param figure the first's where few tell, else the median
     */
    private record Usual(int telling, Optional<Judged> first, double figure) {}

    /**
     * @param all in order
     */
    Company(List<Judged> all) {
        this.all = List.copyOf(all);
        this.bySetup = all.stream()
                .collect(Collectors.groupingBy(judged -> judged.pull().setup()));
        this.byDay = all.stream().collect(Collectors.groupingBy(Company::day));
    }

    private static LocalDate day(Judged judged) {
        return judged.pull().time().toLocalDate();
    }

    /** The pull at that place, from 0. */
    Judged at(int place) {
        return all.get(place);
    }

    /** What is usual among the counted pulls of its setup; empty if there is nothing to hold against. */
    OptionalDouble usualOfSetup(Judged own, Figured figure) {
        String setup = own.pull().setup();
        return usual(own, new Asked(setup, figure), bySetup.getOrDefault(setup, List.of()));
    }

    /** What is usual among the counted pulls of its day. */
    OptionalDouble usualOfDay(Judged own, Figured figure) {
        return usual(own, new Asked(day(own), figure), ofDay(own));
    }

    private List<Judged> ofDay(Judged own) {
        return byDay.getOrDefault(day(own), List.of());
    }

    private OptionalDouble usual(Judged own, Asked asked, List<Judged> group) {
        Usual known = usual.computeIfAbsent(asked, wanted -> told(group, wanted.figure()));
        boolean onlyItself =
                known.telling() < 3 && known.first().filter(own::equals).isPresent();
        return known.telling() == 0 || onlyItself ? OptionalDouble.empty() : OptionalDouble.of(known.figure());
    }

    private static Usual told(List<Judged> group, Figured figure) {
        List<Judged> telling = group.stream()
                .filter(Judged::counted)
                .filter(other -> Double.isFinite(figure.of(other)))
                .toList();
        double[] figures = telling.stream().mapToDouble(figure::of).toArray();
        double usual =
                figures.length == 0 ? Double.NaN : figures.length < 3 ? figures[0] : new Median().evaluate(figures);
        return new Usual(figures.length, telling.stream().findFirst(), usual);
    }

    /** The first counted pull of its day that logs this. */
    OptionalDouble firstOfDay(Judged own, Role role) {
        return ofDay(own).stream()
                .filter(Judged::counted)
                .mapToDouble(other -> other.first(role))
                .filter(Double::isFinite)
                .findFirst();
    }

    /** The widest throttle of its day. */
    OptionalDouble widestOfDay(Judged own) {
        return widest.computeIfAbsent(
                day(own),
                day -> ofDay(own).stream()
                        .flatMapToDouble(other -> other.trace().recording().highest(Role.THROTTLE).stream())
                        .max());
    }

    /** Every pull before it, in order. */
    List<Judged> before(Judged own) {
        return all.subList(0, own.place());
    }
}
