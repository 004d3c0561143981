package org.pullproof.health;

import java.time.LocalDateTime;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.pullproof.units.Dimension;
import org.pullproof.units.Quantity;

/**
 * One reading as it was typed, with how it was made. The session keeps readings in the order they came; that order tells what
 * was read before and after a piece of work.
 */
public sealed interface Reading {
    TestKind test();

    /** The cylinder, or empty for the whole engine. */
    OptionalInt cylinder();

    Conditions conditions();

    /** When it was taken in. */
    LocalDateTime time();

    /** Free words, may be empty. */
    String note();

    /**
     * Drop of engine speed with one cylinder off.
     *
     * @param drop fall of speed
     * @param round 1, 2, … for repeats
     */
    record Balance(
            OptionalInt cylinder, Quantity drop, int round, Conditions conditions, LocalDateTime time, String note)
            implements Reading {
        public Balance {
            drop.requireDimension(Dimension.ROTATION);
        }

        @Override
        public TestKind test() {
            return TestKind.BALANCE;
        }
    }

    /**
     * Gauge pressure after cranking.
     *
     * @param wet with oil put into the cylinder
     * @param gauge highest reading, over the surroundings
     * @param first reading after the first stroke
     * @param round 1, 2, … for repeats
     */
    record Compression(
            OptionalInt cylinder,
            boolean wet,
            Quantity gauge,
            Optional<Quantity> first,
            int round,
            Conditions conditions,
            LocalDateTime time,
            String note)
            implements Reading {
        public Compression {
            gauge.requireDimension(Dimension.PRESSURE);
            first.ifPresent(pressure -> pressure.requireDimension(Dimension.PRESSURE));
        }

        /** This with no first stroke recorded. */
        Compression withoutFirst() {
            return new Compression(cylinder, wet, gauge, Optional.empty(), round, conditions, time, note);
        }

        @Override
        public TestKind test() {
            return wet ? TestKind.COMPRESSION_WET : TestKind.COMPRESSION_DRY;
        }
    }

    /**
     * Air let into a cylinder at top dead centre.
     *
     * @param value what the tester showed
     * @param supply regulator pressure, over the surroundings
     * @param orifice diameter of the tester's restrictor
     * @param air where air was heard; empty if nobody listened, present and empty if nothing was heard
     */
    record Leakdown(
            OptionalInt cylinder,
            Leak value,
            Optional<Quantity> supply,
            Optional<Quantity> orifice,
            Optional<Set<AirPlace>> air,
            int round,
            Conditions conditions,
            LocalDateTime time,
            String note)
            implements Reading {
        public Leakdown {
            air = air.map(Set::copyOf);
        }

        @Override
        public TestKind test() {
            return TestKind.LEAKDOWN;
        }
    }

    /** What a leak-down tester shows. */
    sealed interface Leak {
        /** A percentage. */
        record Percentage(Quantity share) implements Leak {}

        /** The pressure behind the restrictor, over the surroundings. */
        record Behind(Quantity pressure) implements Leak {}

        /** A zone of the gauge. */
        record Zone(LeakZone zone) implements Leak {}
    }

    /** A further test, answered by a word or by a figure; which words there are: {@link Words}. */
    record Sign(
            TestKind test,
            OptionalInt cylinder,
            Optional<Quantity> figure,
            Optional<String> word,
            Conditions conditions,
            LocalDateTime time,
            String note)
            implements Reading {
        public Sign {
            if (figure.isPresent() == word.isPresent()) {
                throw new IllegalArgumentException("A sign is a figure or a word: " + test.key());
            }
        }
    }

    /**
     * A repair or exchange: what this cylinder (or the engine) read before is shown as before and no longer weighed.
     *
     * @param what one of the words of {@code work}
     */
    record Work(OptionalInt cylinder, String what, Conditions conditions, LocalDateTime time, String note)
            implements Reading {
        @Override
        public TestKind test() {
            return TestKind.WORK;
        }
    }
}
