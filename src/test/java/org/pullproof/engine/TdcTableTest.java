package org.pullproof.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class TdcTableTest {
    /** Army TM 9-8000, page 2-18: a four-cylinder engine has a power stroke every 180° over 720°. */
    @Test
    void anEvenFourFiresEveryHalfTurn() {
        TdcTable table = TdcTable.of(Engines.even("1-2-3-4", "1-3-4-2"));
        assertThat(table.rows()).extracting(TdcTable.Row::number).containsExactly(1, 3, 4, 2);
        assertThat(table.rows()).extracting(TdcTable.Row::crankDegrees).containsExactly(0, 180, 360, 540);
        assertThat(table.rows()).extracting(TdcTable.Row::damperDegrees).containsExactly(0, 180, 0, 180);
    }

    /** Odd intervals by the list itself: 150 and 90 in turn add up to 0, 150, 240, 390, 480, 630. */
    @Test
    void anOddFireSixFollowsItsListAndNotTheMean() {
        EngineProfile engine =
                Engines.of("1-3-5 | 2-4-6", "1-6-5-4-3-2", Rotor.CLOCKWISE, List.of(150, 90, 150, 90, 150, 90));
        TdcTable table = TdcTable.of(engine);
        assertThat(table.rows()).extracting(TdcTable.Row::crankDegrees).containsExactly(0, 150, 240, 390, 480, 630);
        assertThat(table.rows()).extracting(TdcTable.Row::damperDegrees).containsExactly(0, 150, 240, 30, 120, 270);
    }

    /** The distributor turns once in two turns of the crank: common practice, no source. */
    @Test
    void theRotorTurnsHalfAsFar() {
        EngineProfile engine =
                Engines.of("1-3-5 | 2-4-6", "1-6-5-4-3-2", Rotor.CLOCKWISE, List.of(150, 90, 150, 90, 150, 90));
        assertThat(TdcTable.of(engine).rows())
                .extracting(row -> row.rotorDegrees().orElseThrow())
                .containsExactly(0.0, 75.0, 120.0, 195.0, 240.0, 315.0);
    }

    @Test
    void withoutADistributorThereIsNoRotor() {
        assertThat(TdcTable.of(Engines.even("1-2-3-4", "1-3-4-2")).rows())
                .extracting(TdcTable.Row::rotorDegrees)
                .containsOnly(OptionalDouble.empty());
    }
}
