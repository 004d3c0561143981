package org.pullproof.dyno;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * The pulls of a day: those driven, and those the plan still asks for. An excluded pull keeps its number and does not count as done.
 *
 * @param runs in order, driven ones first
 */
public record RunList(List<Run> runs) {
    public RunList {
        runs = List.copyOf(runs);
    }

    /**
     * One pull.
     *
     * @param name setup and number: "base-3"; of one to come, the number it would get
     * @param setup name of the setup
     * @param made when; empty of one to come
     * @param excluded why it does not count, if so
     */
    public record Run(String name, String setup, Optional<LocalDateTime> made, Optional<String> excluded) {}

    /**
     * @param day the day
     * @param all every day, because pulls are numbered through
     * @param setupName the name of a setup by its id
     */
    static RunList of(DynoDay day, List<DynoDay> all, UnaryOperator<String> setupName) {
        List<Run> runs = new ArrayList<>();
        day.pulls().forEach(pull -> runs.add(driven(pull, setupName.apply(pull.setup()))));
        day.plan().ifPresent(plan -> runs.addAll(toCome(plan, day, all, setupName)));
        return new RunList(runs);
    }

    private static Run driven(Pull pull, String setup) {
        return new Run(setup + "-" + pull.number(), setup, Optional.of(pull.time()), pull.excluded());
    }

    private static List<Run> toCome(DayPlan plan, DynoDay day, List<DynoDay> all, UnaryOperator<String> setupName) {
        List<String> left = new ArrayList<>(plan.inOrder());
        day.pulls().stream()
                .filter(pull -> pull.excluded().isEmpty())
                .forEach(pull -> left.remove(setupName.apply(pull.setup())));
        Map<String, Integer> numbers = new HashMap<>();
        all.stream()
                .flatMap(any -> any.pulls().stream())
                .forEach(pull -> numbers.merge(setupName.apply(pull.setup()), pull.number(), Math::max));
        return left.stream()
                .map(setup -> new Run(
                        setup + "-" + numbers.merge(setup, 1, Integer::sum), setup, Optional.empty(), Optional.empty()))
                .toList();
    }

    /** The first pull the plan still asks for. */
    public Optional<Run> next() {
        return runs.stream().filter(run -> run.made().isEmpty()).findFirst();
    }
}
