package org.pullproof.health;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;

/**
 * What work closes. Method of diagnosis, section 2: an ignition fault has no hole, so the parts of the ignition that a tune-up renews
 * leave compression and leak-down as they were.
 */
class ChaptersTest {
    private static final LocalDateTime WHEN = LocalDateTime.of(2026, 6, 14, 13, 40);

    private static Reading sign(TestKind test) {
        return new Reading.Sign(
                test,
                test.byCylinder() ? OptionalInt.of(3) : OptionalInt.empty(),
                Optional.of(Quantity.of("1", Unit.PSI)),
                Optional.empty(),
                Conditions.notRecorded(),
                WHEN,
                "");
    }

    @ParameterizedTest
    @CsvSource({
        "plug, MISFIRES, true",
        "plug, PLUG, true",
        "coil, COIL_SWAP, true",
        "wire, MISFIRES, true",
        "injector, PLUG, true",
        "plug, BORESCOPE, true",
        "coil, RUNNING_COMPRESSION, true",
        "ignition-parts, MISFIRES, true",
        "ignition-parts, BORESCOPE, false",
        "ignition-parts, RUNNING_COMPRESSION, false",
        "ignition-parts, LASH, false",
        "lash-set, RUNNING_COMPRESSION, true",
        "lash-set, MISFIRES, true",
        "head, BORESCOPE, true",
        "rings, RUNNING_COMPRESSION, true",
        "other, LASH, true"
    })
    void workClosesTheReadingsItCanHaveChanged(String work, TestKind test, boolean closed) {
        Reading before = sign(test);
        Reading.Work done = new Reading.Work(OptionalInt.of(3), work, Conditions.notRecorded(), WHEN, "");
        Reading after = sign(test);
        Chapters chapters = new Chapters(List.of(before, done, after));

        assertThat(chapters.present(3)).hasSize(closed ? 1 : 2);
        assertThat(chapters.before(3)).hasSize(closed ? 1 : 0);
    }

    @ParameterizedTest
    @CsvSource({
        "ignition-parts, VACUUM, true",
        "ignition-parts, OIL_PRESSURE, false",
        "plug, OIL_PRESSURE, true",
        "rings, OIL_PRESSURE, true"
    })
    void workOnTheWholeEngineClosesItsSigns(String work, TestKind test, boolean closed) {
        Reading.Work done = new Reading.Work(OptionalInt.empty(), work, Conditions.notRecorded(), WHEN, "");
        assertThat(new Chapters(List.of(sign(test), done)).ofEngine()).hasSize(closed ? 0 : 1);
    }
}
