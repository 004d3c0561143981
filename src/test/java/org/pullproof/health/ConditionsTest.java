package org.pullproof.health;

import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;

/** Found by spoilt sessions: such conditions were taken, and then the session could not be appraised. */
class ConditionsTest {
    private static Conditions made(OptionalInt strokes, Optional<Quantity> station) {
        return new Conditions(
                strokes,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                station,
                Optional.empty(),
                Optional.empty());
    }

    @Test
    void noStrokesAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> made(OptionalInt.of(0), Optional.empty()))
                .withMessage("Strokes are counted from 1, were 0");
    }

    @Test
    void aStationPressureOfNothingIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> made(OptionalInt.empty(), Optional.of(Quantity.of("0", Unit.KPA))))
                .withMessage("Station pressure is above zero, was 0 kPa");
    }
}
