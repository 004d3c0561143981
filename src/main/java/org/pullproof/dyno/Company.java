package org.pullproof.dyno;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * The other pulls that one is held against. What is usual among them is their median where there are three or more; of two, the first
 * is what the second is held against, for no one can tell which of the two is off.
 *
 * @param all every pull in order
 */
record Company(List<Judged> all) {
    Company {
        all = List.copyOf(all);
    }

    /** What is usual among the counted pulls of its setup; empty if there is nothing to hold against. */
    OptionalDouble usualOfSetup(Judged own, ToDoubleFunction<Judged> figure) {
        return usual(
                own, figure, other -> other.pull().setup().equals(own.pull().setup()));
    }

    /** What is usual among the counted pulls of its day. */
    OptionalDouble usualOfDay(Judged own, ToDoubleFunction<Judged> figure) {
        return usual(own, figure, other -> sameDay(own, other));
    }

    private OptionalDouble usual(Judged own, ToDoubleFunction<Judged> figure, Predicate<Judged> wanted) {
        List<Judged> telling = all.stream()
                .filter(other -> other.counted() && wanted.test(other))
                .filter(other -> Double.isFinite(figure.applyAsDouble(other)))
                .toList();
        if (telling.isEmpty() || (telling.get(0).equals(own) && telling.size() < 3)) {
            return OptionalDouble.empty();
        }
        double[] figures = telling.stream().mapToDouble(figure).toArray();
        return OptionalDouble.of(telling.size() < 3 ? figures[0] : new Median().evaluate(figures));
    }

    /** The first counted pull of its day that logs this. */
    OptionalDouble firstOfDay(Judged own, Role role) {
        return all.stream()
                .filter(other -> other.counted() && sameDay(own, other))
                .mapToDouble(other -> other.first(role))
                .filter(Double::isFinite)
                .findFirst();
    }

    /** The widest throttle of its day. */
    OptionalDouble widestOfDay(Judged own) {
        return all.stream()
                .filter(other -> sameDay(own, other))
                .flatMapToDouble(
                        other -> Arrays.stream(other.trace().recording().finite(Role.THROTTLE)))
                .max();
    }

    /** Every pull before it, in order. */
    List<Judged> before(Judged own) {
        return all.stream()
                .takeWhile(other -> !other.pull().id().equals(own.pull().id()))
                .toList();
    }

    private static boolean sameDay(Judged own, Judged other) {
        return own.pull().time().toLocalDate().equals(other.pull().time().toLocalDate());
    }
}
