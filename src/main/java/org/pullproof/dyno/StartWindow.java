package org.pullproof.dyno;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.math3.stat.descriptive.rank.Median;
import org.pullproof.units.Figures;
import org.pullproof.units.Shown;

/**
 * What the next pull of a day should begin with, so that it can be held against the others: as warm as they began, and long enough
 * after the last. Before the first pull the warm-up is the measure. The limits are judgement, common practice without a source.
 *
 * @param limits one for each thing that is watched, in the order it is read off
 * @param last when the last pull of the day was made
 * @param pause the least time between two pulls
 */
public record StartWindow(List<Limit> limits, Optional<LocalDateTime> last, Duration pause) {
    private static final double VOLTS_EITHER_WAY = 0.3;
    private static final Duration PAUSE = Duration.ofSeconds(90);
    private static final Duration PAUSE_CHARGED = Duration.ofSeconds(150);
    private static final int ENOUGH_FOR_A_MEDIAN = 3;

    public StartWindow {
        limits = List.copyOf(limits);
    }

    /**
     * Between which figures a pull may begin.
     *
     * @param role what is read
     * @param from lower end, SI unit of the role
     * @param to upper end
     * @param usual whether the pulls of the day tell it; else it is the warm-up's
     * @param ended what was logged at the end of the last pull, if it was
     */
    public record Limit(Role role, double from, double to, boolean usual, Optional<Double> ended) {
        /** How the end of the last pull lies to it. */
        public Lies lies() {
            return ended.map(figure -> figure > to ? Lies.ABOVE : figure < from ? Lies.BELOW : Lies.INSIDE)
                    .orElse(Lies.NOT_LOGGED);
        }
    }

    /** Where a figure lies. */
    public enum Lies {
        INSIDE("inside"),
        ABOVE("wait until it has fallen"),
        BELOW("warm it up"),
        NOT_LOGGED("read it off");

        private final String words;

        Lies(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * @param pulls of the day, in order
     * @param charged whether the engine breathes compressed air
     */
    static StartWindow of(List<PullFindings> pulls, PullLimits limits, boolean charged) {
        Reader read = new Reader(pulls);
        return new StartWindow(
                Stream.of(
                                read.limit(Role.COOLANT, limits.coolantC(), Optional.of(celsius(80, 95))),
                                read.limit(Role.OIL, limits.oilC(), Optional.of(celsius(75, 100))),
                                read.limit(Role.INTAKE, limits.intakeC(), Optional.empty()),
                                read.limit(Role.VOLTS, VOLTS_EITHER_WAY, Optional.empty()))
                        .flatMap(Optional::stream)
                        .toList(),
                pulls.stream().map(pull -> pull.pull().time()).reduce((earlier, later) -> later),
                charged ? PAUSE_CHARGED : PAUSE);
    }

    private record Range(double from, double to) {}

    private static Range celsius(double from, double to) {
        return new Range(from + 273.15, to + 273.15);
    }

    private record Reader(List<PullFindings> pulls) {
        Optional<Limit> limit(Role role, double eitherWay, Optional<Range> warm) {
            double[] starts = pulls.stream()
                    .filter(pull -> !pull.excluded())
                    .map(pull -> pull.trace().recording().finite(role))
                    .filter(logged -> logged.length > 0)
                    .mapToDouble(logged -> logged[0])
                    .toArray();
            return starts.length == 0
                    ? warm.map(range -> new Limit(role, range.from(), range.to(), false, ended(role)))
                    : Optional.of(around(role, usual(starts), eitherWay));
        }

        private Limit around(Role role, double usual, double eitherWay) {
            return new Limit(role, usual - eitherWay, usual + eitherWay, true, ended(role));
        }

        /** As the flag of a start does: the median of three or more, else the first. */
        private static double usual(double[] starts) {
            return starts.length < ENOUGH_FOR_A_MEDIAN ? starts[0] : new Median().evaluate(starts);
        }

        private Optional<Double> ended(Role role) {
            return pulls.stream()
                    .reduce((earlier, later) -> later)
                    .map(pull -> pull.trace().recording().finite(role))
                    .filter(logged -> logged.length > 0)
                    .map(logged -> logged[logged.length - 1]);
        }
    }

    /** How long is still to wait at a time; zero if it is long enough, or if there is no pull yet. */
    public Duration wait(LocalDateTime now) {
        return last.map(made -> pause.minus(Duration.between(made, now)))
                .filter(left -> !left.isNegative() && left.compareTo(pause) <= 0)
                .orElse(Duration.ZERO);
    }

    /** What is due before the next pull, one sentence each. */
    public List<String> due(Figures figures) {
        Stream<String> read = limits.stream().map(limit -> sentence(limit, figures));
        String pulls = "At least " + pause.toSeconds() + Figures.NO_BREAK_SPACE + "s after the pull before, "
                + "begun at the same speed within 50 rpm.";
        return Stream.concat(read, Stream.of(pulls)).toList();
    }

    private static String sentence(Limit limit, Figures figures) {
        String range = figure(limit, limit.from(), figures) + " to " + figure(limit, limit.to(), figures);
        String basis = limit.usual() ? ", as today's pulls began" : ", warmed up";
        String ended = limit.ended()
                .map(figure -> "; the last pull ended at " + figure(limit, figure, figures) + ": "
                        + limit.lies().words())
                .orElse("; it was not logged, read it off");
        String name = limit.role().words();
        return Character.toUpperCase(name.charAt(0)) + name.substring(1) + " " + range + basis + ended + ".";
    }

    private static String figure(Limit limit, double value, Figures figures) {
        return limit.role() == Role.VOLTS
                ? Figures.number(value, 1) + Figures.NO_BREAK_SPACE + "V"
                : figures.of(value, Shown.AIR_TEMPERATURE);
    }
}
