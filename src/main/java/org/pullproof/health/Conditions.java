package org.pullproof.health;

import java.util.Optional;
import java.util.OptionalInt;
import org.pullproof.units.Quantity;

/**
 * How a reading was made. What was not recorded is absent, never a default.
 *
 * @param strokes compression strokes counted
 * @param throttle open or closed
 * @param plugs all out or one out
 * @param engine hot, warm or cold
 * @param crankingVolts battery voltage while cranking
 * @param crankingRpm cranking speed
 * @param station pressure of the air at the test
 * @param gauge which gauge
 * @param gaugeStep resolution of the gauge
 * @param oil oil put into the cylinder of a wet reading
 * @param who who read it
 * @param closed what a leak-down tester showed with its hose closed: a pressure, or a percentage lost
 */
public record Conditions(
        OptionalInt strokes,
        Optional<Throttle> throttle,
        Optional<Plugs> plugs,
        Optional<Warmth> engine,
        Optional<Quantity> crankingVolts,
        Optional<Quantity> crankingRpm,
        Optional<Quantity> station,
        Optional<String> gauge,
        Optional<Quantity> gaugeStep,
        Optional<Quantity> oil,
        Optional<String> who,
        Optional<Quantity> closed) {

    public Conditions {
        if (strokes.orElse(1) < 1) {
            throw new IllegalArgumentException("Strokes are counted from 1, were " + strokes.getAsInt());
        }
        requireAboveZero("Cranking speed", crankingRpm);
        requireAboveZero("Station pressure", station);
    }

    private static void requireAboveZero(String name, Optional<Quantity> told) {
        told.filter(quantity -> !(quantity.si() > 0)).ifPresent(quantity -> {
            throw new IllegalArgumentException(name + " is above zero, was " + quantity);
        });
    }

    /** Conditions of which oil, who and the closed hose are not recorded. */
    public Conditions(
            OptionalInt strokes,
            Optional<Throttle> throttle,
            Optional<Plugs> plugs,
            Optional<Warmth> engine,
            Optional<Quantity> crankingVolts,
            Optional<Quantity> crankingRpm,
            Optional<Quantity> station,
            Optional<String> gauge,
            Optional<Quantity> gaugeStep) {
        this(
                strokes,
                throttle,
                plugs,
                engine,
                crankingVolts,
                crankingRpm,
                station,
                gauge,
                gaugeStep,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** Where the throttle stood. */
    public enum Throttle {
        OPEN,
        CLOSED
    }

    /** Which plugs were out. */
    public enum Plugs {
        ALL_OUT,
        ONE_OUT
    }

    /** How warm the engine was. */
    public enum Warmth {
        HOT,
        WARM,
        COLD
    }

    /** Nothing was recorded. */
    public static Conditions notRecorded() {
        return new Conditions(
                OptionalInt.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }
}
