package org.pullproof.dyno;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.units.Unit;

class ColumnChoiceTest {

    @Test
    void readsRoleHeaderAndUnit() {
        assertThat(ColumnChoice.parse("power=Wheel power:kW"))
                .isEqualTo(new ColumnChoice(Role.POWER, "Wheel power", Optional.of(Unit.KW)));
    }

    @Test
    void theUnitMayBeLeftToTheHeader() {
        assertThat(ColumnChoice.parse("rpm=n [1/min]"))
                .isEqualTo(new ColumnChoice(Role.RPM, "n [1/min]", Optional.empty()));
    }

    @ParameterizedTest
    @CsvSource({
        "power, names no column",
        "gearbox=MAP:kPa, 'a column is rpm, power, torque, time, roll, pull, throttle, lambda, knock, boost, volts, coolant, oil, intake or fuel-pressure, was \"gearbox\"'",
        "power=P:zz, is not a unit known here",
        "power=P:Nm, 'N·m is a torque, not a power'"
    })
    void anotherShapeIsRefusedWithASentence(String text, String sentence) {
        assertThatThrownBy(() -> ColumnChoice.parse(text)).hasMessageContaining(sentence);
    }
}
