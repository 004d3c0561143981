package org.pullproof.changes;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.pullproof.dyno.PullFindings;
import org.pullproof.units.Figures;

/**
 * What the other pulls say against a pull: flags of the fit, and which pulls a second fit leaves out for them.
 *
 * @param flags sentences by the pull's id, each beginning with its keyword
 * @param odd ids of the pulls that are odd, without the fellow of a pair that is named beside them
 */
record Doubts(Map<String, List<String>> flags, Set<String> odd) {
    Doubts {
        flags = Map.copyOf(flags);
        odd = Set.copyOf(odd);
    }

    /** Nothing is said against any pull. */
    static final Doubts NONE = new Doubts(Map.of(), Set.of());

    static Doubts of(PullSequence counted, RotatingParts rotating, UnaryOperator<String> names, Prior prior) {
        if (counted.entries().isEmpty()) {
            return NONE;
        }
        Finder finder = new Finder(counted, names);
        finder.odd(OddPulls.in(counted.observations(), prior));
        finder.shapes(ShapeCheck.in(
                counted.entries().stream().map(entry -> entry.pull().trace()).toList()));
        finder.rotating(rotating);
        return new Doubts(finder.flags, finder.odd);
    }

    /** A pull with the flags that came to it here. */
    PullFindings flagged(PullFindings pull) {
        List<String> more = flags.getOrDefault(pull.pull().id(), List.of());
        return more.isEmpty()
                ? pull
                : pull.withFlags(
                        Stream.concat(pull.flags().stream(), more.stream()).toList());
    }

    /** Collects the flags. */
    private static final class Finder {
        private final Map<String, List<String>> flags = new HashMap<>();
        private final Set<String> odd = new LinkedHashSet<>();
        private final List<PullSequence.Entry> entries;
        private final UnaryOperator<String> names;

        Finder(PullSequence counted, UnaryOperator<String> names) {
            this.entries = counted.entries();
            this.names = names;
        }

        private void flag(PullFindings pull, String sentence) {
            flags.computeIfAbsent(pull.pull().id(), id -> new ArrayList<>()).add(sentence);
        }

        void odd(List<OddPulls.Odd> found) {
            for (OddPulls.Odd each : found) {
                PullSequence.Entry entry = entries.get(each.place());
                odd.add(entry.pull().pull().id());
                Optional<PullFindings> fellow = fellow(entry);
                flag(entry.pull(), oddWords(each, entry.pull(), fellow));
                fellow.ifPresent(other -> flag(other, oddWords(each, entry.pull(), fellow)));
            }
        }

        /** The other pull of a run of exactly two: then the figures cannot say which of them is wrong. */
        private Optional<PullFindings> fellow(PullSequence.Entry entry) {
            List<PullFindings> block = entries.stream()
                    .filter(other ->
                            other.observation().block() == entry.observation().block())
                    .map(PullSequence.Entry::pull)
                    .toList();
            return block.stream()
                    .filter(other -> block.size() == 2 && !id(other).equals(id(entry.pull())))
                    .findFirst();
        }

        private static String id(PullFindings pull) {
            return pull.pull().id();
        }

        private static String oddWords(OddPulls.Odd odd, PullFindings pull, Optional<PullFindings> fellow) {
            String far = Figures.number(Math.abs(odd.t()), 1)
                    + " times its standard error from what the others say, limit " + Figures.number(odd.limit(), 1);
            return fellow.map(other -> "odd: " + other.name() + " or " + pull.name() + " does not fit (" + far
                            + "), and of two the figures cannot tell which: do a third.")
                    .orElse("odd: it lies " + far + "; check it or repeat it.");
        }

        void shapes(List<ShapeCheck.Odd> found) {
            for (ShapeCheck.Odd each : found) {
                PullFindings pull = entries.get(each.place()).pull();
                if (!isTheSetupsOwnShape(pull, found)) {
                    flag(
                            pull,
                            "shape: its curve is bent otherwise than those of the other pulls ("
                                    + Figures.percent(each.roughness(), 1) + " against "
                                    + Figures.percent(each.usual(), 1)
                                    + " as a rule): look for a slip, a misfire or a lift.");
                }
            }
        }

        /** Where every pull of a setup has it, and there are several, the change made the curve so. */
        private boolean isTheSetupsOwnShape(PullFindings pull, List<ShapeCheck.Odd> found) {
            List<PullSequence.Entry> fellows = entries.stream()
                    .filter(entry -> entry.setup().equals(pull.pull().setup()))
                    .toList();
            return fellows.size() > 1
                    && fellows.stream()
                            .allMatch(entry -> found.stream()
                                    .anyMatch(odd ->
                                            id(entries.get(odd.place()).pull()).equals(id(entry.pull()))));
        }

        void rotating(RotatingParts parts) {
            for (PullSequence.Entry entry : entries) {
                PullFindings first = entries.get(0).pull();
                parts.flag(entry.pull(), first, names.apply(first.pull().setup()))
                        .ifPresent(sentence -> flag(entry.pull(), sentence));
            }
        }
    }
}
