package org.pullproof.health;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.pullproof.health.leakdown.LeakReading;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;

/**
 * Tells, while the tester is still connected, that a reading is odd beside those before it in the same run, so that it is taken
 * once more before anyone believes it. It judges nothing and refuses nothing.
 *
 * <p>Source: judgement of this project, with the limits of {@link HealthLimits}.
 */
public final class OddReading {
    /** Above this leakage the piston may stand at the end of the exhaust stroke, valves open: judgement, percent. */
    public static final double CHECK_STROKE_PERCENT = 90;

    private static final int FEWEST_OTHERS = 2;
    private static final int STEPS_APART = 2;

    private final HealthLimits limits;

    public OddReading(HealthLimits limits) {
        this.limits = limits;
    }

    /**
     * What is odd about a reading.
     *
     * @param reading just taken
     * @param before the others of its run, first things first
     * @return one sentence; empty if nothing is odd
     */
    public Optional<String> of(Reading reading, List<Reading> before) {
        if (reading instanceof Reading.Compression compression) {
            return compression(compression, kind(before, Reading.Compression.class));
        }
        if (reading instanceof Reading.Balance balance) {
            return beside(
                    balance.drop(),
                    others(balance, kind(before, Reading.Balance.class)),
                    other -> other.drop().si(),
                    limits.deadDrop() / 100);
        }
        return reading instanceof Reading.Leakdown leakdown ? stroke(leakdown) : Optional.empty();
    }

    private static <R extends Reading> List<R> kind(List<Reading> readings, Class<R> kind) {
        return readings.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    private static <R extends Reading> List<R> others(R reading, List<R> before) {
        return before.stream()
                .filter(other -> !other.cylinder().equals(reading.cylinder()))
                .toList();
    }

    private Optional<String> compression(Reading.Compression reading, List<Reading.Compression> before) {
        return firstAboveLast(reading)
                .or(() -> oilTookAway(reading, before))
                .or(() -> repeat(reading, before))
                .or(() -> beside(
                        reading.gauge(),
                        others(reading, alike(reading, before)),
                        other -> other.gauge().si(),
                        1 - limits.doubtBelowOthers() / 100));
    }

    private static List<Reading.Compression> alike(Reading.Compression reading, List<Reading.Compression> before) {
        return before.stream().filter(other -> other.wet() == reading.wet()).toList();
    }

    private static Optional<String> firstAboveLast(Reading.Compression reading) {
        return reading.first()
                .filter(first -> first.si() > reading.gauge().si())
                .map(first -> figure(reading.gauge()) + " is below its own first stroke, " + figure(first)
                        + "; a gauge keeps its highest.");
    }

    private Optional<String> oilTookAway(Reading.Compression reading, List<Reading.Compression> before) {
        return before.stream()
                .filter(dry -> reading.wet() && !dry.wet() && sameCylinder(dry, reading))
                .reduce((one, next) -> next)
                .filter(dry -> apart(dry, reading)
                        && reading.gauge().si() < dry.gauge().si())
                .map(dry -> figure(reading.gauge()) + " with oil is below " + figure(dry.gauge())
                        + " without; oil takes no compression away.");
    }

    private Optional<String> repeat(Reading.Compression reading, List<Reading.Compression> before) {
        return alike(reading, before).stream()
                .filter(earlier -> sameCylinder(earlier, reading))
                .reduce((one, next) -> next)
                .filter(earlier -> apart(earlier, reading))
                .map(earlier -> figure(reading.gauge()) + " differs from " + figure(earlier.gauge())
                        + " before it by more than the gauge explains.");
    }

    private static boolean sameCylinder(Reading one, Reading other) {
        return one.cylinder().equals(other.cylinder());
    }

    /** Two steps of the gauge where its step is recorded, else a share of the larger. */
    private boolean apart(Reading.Compression one, Reading.Compression other) {
        double larger = Math.max(one.gauge().si(), other.gauge().si());
        double allowed = other.conditions()
                .gaugeStep()
                .map(step -> STEPS_APART * step.si())
                .orElse(larger * limits.repeatApart() / 100);
        return Math.abs(one.gauge().si() - other.gauge().si()) > allowed * (1 + 1e-9);
    }

    private static <R extends Reading> Optional<String> beside(
            Quantity read, List<R> others, ToDoubleFunction<R> value, double share) {
        if (others.size() < FEWEST_OTHERS) {
            return Optional.empty();
        }
        double least = others.stream().mapToDouble(value).min().orElseThrow();
        double most = others.stream().mapToDouble(value).max().orElseThrow();
        if (read.si() < least * share) {
            return Optional.of(far(read, "below", others.size(), least, most));
        }
        return read.si() > most / share
                ? Optional.of(far(read, "above", others.size(), least, most))
                : Optional.empty();
    }

    private static String far(Quantity read, String side, int others, double least, double most) {
        return figure(read) + " is far " + side + " the " + Phrase.count(others) + " before it (" + in(read, least)
                + " to " + in(read, most) + ").";
    }

    private static String in(Quantity read, double si) {
        return Figures.number(read.unit().fromSi(si), 0);
    }

    private static String figure(Quantity read) {
        return read.figure().toPlainString();
    }

    private static Optional<String> stroke(Reading.Leakdown reading) {
        OptionalDouble percent = LeakReading.percent(reading);
        return percent.isPresent() && percent.getAsDouble() > CHECK_STROKE_PERCENT
                ? Optional.of("A leak of " + Figures.percent(percent.getAsDouble(), 0)
                        + ": check the stroke first. At the end of the exhaust stroke the valves are open: turn the crank"
                        + " once round, 360°, to the same mark.")
                : Optional.empty();
    }
}
