package org.pullproof.tuneup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.testing.Tools;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;

class WireRemarksTest {
    private final WireRemarks remarks = new WireRemarks(Tools.profile("v8-distributor-order-a"));

    private static WireRecord wire(int cylinder, String kiloOhm, String route) {
        return new WireRecord(
                cylinder, Optional.of(Quantity.of(kiloOhm, Unit.KOHM)), Optional.of(Quantity.of("0.5", Unit.M)), route);
    }

    private List<String> ofCap(Integer... cylinders) {
        return remarks.of(TuneUp.notBegun().withCapOrder(List.of(cylinders)));
    }

    /** Two wires exchanged in the firing order 1 8 4 3 6 5 7 2. */
    @Test
    void aSwappedPairIsFoundAtTheCap() {
        assertThat(ofCap(1, 8, 4, 3, 6, 7, 5, 2))
                .singleElement()
                .asString()
                .startsWith("The wires of cylinders 5 and 7 are swapped");
    }

    @Test
    void itDoesNotMatterAtWhichTowerTheReadingBegan() {
        assertThat(ofCap(6, 5, 7, 2, 1, 8, 4, 3)).isEmpty();
        assertThat(ofCap(6, 7, 5, 2, 1, 8, 4, 3)).singleElement().asString().contains("5 and 7 are swapped");
    }

    @Test
    void aWrongDirectionIsNoSwappedPair() {
        assertThat(ofCap(2, 7, 5, 6, 3, 4, 8, 1))
                .singleElement()
                .asString()
                .startsWith("The wires do not follow the firing order");
    }

    /** Half as much again for its length: judgement, common practice without a source. */
    @ParameterizedTest
    @CsvSource({"7.4, false", "7.6, true"})
    void aWireThatResistsMuchMoreThanTheOthersIsNamed(String kiloOhm, boolean named) {
        TuneUp tuneUp = TuneUp.notBegun()
                .withWire(wire(1, kiloOhm, ""))
                .withWire(wire(2, "5.0", ""))
                .withWire(wire(3, "5.0", ""));
        assertThat(remarks.of(tuneUp)).hasSize(named ? 1 : 0);
    }

    /** 5 and 7 fire in succession side by side (Army TM 5-4210-230-14&amp;P-1, note on cross fire). */
    @Test
    void wiresThatFireInSuccessionMustNotRunTheSameWay() {
        TuneUp tuneUp = TuneUp.notBegun()
                .withWire(wire(5, "5", "lower loom"))
                .withWire(wire(7, "5", "lower loom"))
                .withWire(wire(1, "5", "lower loom"));
        assertThat(remarks.of(tuneUp)).singleElement().asString().contains("cylinders 5 and 7 run together");
    }
}
