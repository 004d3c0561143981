package org.pullproof.health.compression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDateTime;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.pullproof.health.Conditions;
import org.pullproof.health.Conditions.Plugs;
import org.pullproof.health.Conditions.Throttle;
import org.pullproof.health.Reading;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;

class ComparisonTest {
    private final TreeMap<Integer, Reading.Compression> dry = new TreeMap<>();

    private void read(int cylinder, double psi, OptionalInt strokes, Throttle throttle, Plugs plugs, String gauge) {
        Conditions how = new Conditions(
                strokes,
                Optional.of(throttle),
                Optional.of(plugs),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(gauge),
                Optional.empty());
        dry.put(cylinder, reading(cylinder, psi, Optional.empty(), how));
    }

    private void alike(int cylinder, double psi) {
        read(cylinder, psi, OptionalInt.of(6), Throttle.OPEN, Plugs.ALL_OUT, "A");
    }

    private static Reading.Compression reading(int cylinder, double psi, Optional<Quantity> first, Conditions how) {
        return new Reading.Compression(
                OptionalInt.of(cylinder),
                false,
                Quantity.of(psi, Unit.PSI),
                first,
                1,
                how,
                LocalDateTime.of(2026, 6, 14, 10, 0),
                "");
    }

    @Test
    void readingsMadeAlikeCompare() {
        alike(1, 158);
        alike(2, 162);
        Comparison comparison = Comparison.of(dry);
        assertThat(comparison.alike()).hasSize(2);
        assertThat(comparison.takenAsAlike()).isEmpty();
    }

    @Test
    void anotherCountOfStrokesIsNamed() {
        alike(1, 158);
        alike(2, 162);
        read(3, 140, OptionalInt.of(4), Throttle.OPEN, Plugs.ALL_OUT, "A");
        assertThat(Comparison.of(dry).whyNot()).containsOnlyKeys(3).containsEntry(3, "4 strokes, the others 6");
    }

    @Test
    void aClosedThrottleAndPlugsLeftInAreNamed() {
        alike(1, 158);
        read(2, 120, OptionalInt.of(6), Throttle.CLOSED, Plugs.ALL_OUT, "A");
        read(3, 120, OptionalInt.of(6), Throttle.OPEN, Plugs.ONE_OUT, "A");
        assertThat(Comparison.of(dry).whyNot())
                .containsEntry(2, "throttle closed")
                .containsEntry(3, "only one plug out");
    }

    @Test
    void anotherGaugeIsNamed() {
        alike(1, 158);
        alike(2, 158);
        read(3, 150, OptionalInt.of(6), Throttle.OPEN, Plugs.ALL_OUT, "B");
        assertThat(Comparison.of(dry).whyNot()).containsEntry(3, "gauge B, the others gauge A");
    }

    @Test
    void ofTwoEqualGroupsTheOneWithMoreStrokesCompares() {
        read(1, 150, OptionalInt.of(4), Throttle.OPEN, Plugs.ALL_OUT, "A");
        alike(2, 158);
        assertThat(Comparison.of(dry).alike()).containsOnlyKeys(2);
    }

    @Test
    void whatSomeReadingsDidNotRecordIsSaid() {
        alike(1, 158);
        alike(2, 158);
        read(3, 150, OptionalInt.empty(), Throttle.OPEN, Plugs.ALL_OUT, "A");
        assertThat(Comparison.of(dry).takenAsAlike())
                .containsExactly("Strokes not recorded on cylinder 3; taken as made like the others.");
    }

    @Test
    void whatNoReadingRecordedIsSaidOnce() {
        dry.put(1, reading(1, 158, Optional.empty(), Conditions.notRecorded()));
        dry.put(2, reading(2, 158, Optional.empty(), Conditions.notRecorded()));
        assertThat(Comparison.of(dry).takenAsAlike())
                .containsExactly("Strokes, throttle, plugs and gauge not recorded with the compression readings;"
                        + " taken as made alike.");
    }

    @Test
    void aReadingBelowItsOwnFirstStrokeDoesNotCompare() {
        alike(1, 158);
        dry.put(2, reading(2, 80, Optional.of(Quantity.of(107, Unit.PSI)), Conditions.notRecorded()));
        assertThat(Comparison.of(dry).whyNot()).containsEntry(2, "less than its own first stroke");
    }

    /** (163 − 155)/163 = 4.908 %. */
    @Test
    void spreadIsTheDistanceOfTheLowestFromTheHighest() {
        alike(1, 163);
        alike(2, 158);
        alike(3, 155);
        assertThat(Comparison.of(dry).spreadPercent().orElseThrow()).isCloseTo(100 * 8.0 / 163, within(1e-9));
    }
}
