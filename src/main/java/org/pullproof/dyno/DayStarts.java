package org.pullproof.dyno;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Tells how the last dyno day goes on: with what the next pull may begin, and which pulls are still to come. Immutable. */
public final class DayStarts {
    private final PullLimits limits;

    public DayStarts(PullLimits limits) {
        this.limits = limits;
    }

    /**
     * @param made the pulls of every day
     * @param charged whether the engine breathes compressed air
     */
    public StartWindow window(List<DynoDay> days, List<PullFindings> made, boolean charged) {
        List<PullFindings> ofDay = last(days).stream()
                .flatMap(day -> made.stream()
                        .filter(pull -> pull.pull().time().toLocalDate().equals(day.date())))
                .toList();
        return StartWindow.of(ofDay, limits, charged);
    }

    /**
     * @param setupName the name of a setup by its id
     */
    public RunList runs(List<DynoDay> days, UnaryOperator<String> setupName) {
        return last(days).map(day -> RunList.of(day, days, setupName)).orElse(new RunList(List.of()));
    }

    private static Optional<DynoDay> last(List<DynoDay> days) {
        return days.stream().reduce((earlier, later) -> later);
    }
}
