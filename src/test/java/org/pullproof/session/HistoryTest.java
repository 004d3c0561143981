package org.pullproof.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.pullproof.car.Car;
import org.pullproof.car.Fact;
import org.pullproof.engine.Bank;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.FiringOrder;
import org.pullproof.engine.FuelSystem;
import org.pullproof.engine.Geometry;
import org.pullproof.engine.Ignition;
import org.pullproof.engine.Known;
import org.pullproof.engine.Layout;
import org.pullproof.engine.PlugSpec;
import org.pullproof.engine.Rotor;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;

class HistoryTest {
    private static final PlugSpec PLUGS = new PlugSpec(
            Quantity.of("0.8", Unit.MM),
            Quantity.of("0.9", Unit.MM),
            Quantity.of("20", Unit.NM),
            Quantity.of("30", Unit.NM),
            "14 mm");
    private static final EngineProfile TWIN = new EngineProfile(
            "twin",
            "invented twin",
            Layout.INLINE,
            0,
            List.of(new Bank("A", List.of(1, 2), true)),
            new FiringOrder(List.of(1, 2), List.of(360, 360)),
            Rotor.NONE,
            new Geometry(0.08, 0.08, 0.14, 9, 50, true),
            PLUGS,
            Ignition.COIL_ON_PLUG,
            FuelSystem.PORT_INJECTION,
            false,
            Known.NOT_KNOWN,
            "inline-coil-on-plug",
            List.of());

    private final History start = History.of(Session.begin("grey coupé", TWIN));

    private static Edit tell(Fact fact, String text) {
        return new Edit(
                "Tell " + fact.key(), session -> session.withCar(session.car().with(fact, text)));
    }

    private static Car carOf(History history) {
        return history.present().car();
    }

    @Test
    void undoBringsTheEarlierDocumentBack() {
        History edited = start.edit(tell(Fact.FUEL, "91 octane"));
        assertThat(edited.undo().present()).isEqualTo(start.present());
    }

    @Test
    void redoDoesTheUndoneEditAgain() {
        History edited = start.edit(tell(Fact.FUEL, "91 octane"));
        assertThat(edited.undo().redo().present()).isEqualTo(edited.present());
    }

    @Test
    void undoAndRedoNameTheirEdit() {
        History edited = start.edit(tell(Fact.FUEL, "91 octane"));
        assertThat(edited.undoName()).contains("Tell fuel");
        assertThat(edited.undo().redoName()).contains("Tell fuel");
    }

    @Test
    void aNewEditForgetsWhatWasUndone() {
        History history = start.edit(tell(Fact.FUEL, "91 octane")).undo().edit(tell(Fact.GEAR, "3rd"));
        assertThat(history.redoName()).isEmpty();
        assertThat(carOf(history).told(Fact.FUEL)).isEmpty();
    }

    @Test
    void undoWithoutPastChangesNothing() {
        assertThat(start.undo()).isEqualTo(start);
    }

    @Test
    void severalUndosGoBackInOrder() {
        History edited = start.edit(tell(Fact.FUEL, "91 octane")).edit(tell(Fact.GEAR, "3rd"));
        assertThat(carOf(edited.undo()).told(Fact.FUEL)).contains("91 octane");
        assertThat(carOf(edited.undo().undo()).told(Fact.FUEL)).isEmpty();
    }
}
