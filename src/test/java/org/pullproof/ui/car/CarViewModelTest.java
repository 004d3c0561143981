package org.pullproof.ui.car;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pullproof.car.Access;
import org.pullproof.car.Fact;
import org.pullproof.car.Runs;
import org.pullproof.engine.EngineProfile;
import org.pullproof.ui.DeskFixture;
import org.pullproof.ui.SheetFixture;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.weather.Standard;

class CarViewModelTest {
    @TempDir
    private Path folder;

    private SessionViewModel session;
    private CarViewModel model;

    @BeforeEach
    void begin() throws IOException {
        DeskFixture desk = new DeskFixture(folder);
        session = desk.model();
        model = new CarViewModel(
                session,
                desk.tools().setFacts(),
                desk.tools().chooseProfile(),
                desk.tools().profiles().all());
    }

    @Test
    void whatTheOwnerPermitsIsKeptAndCanBeUndone() {
        model.permit(Access.PLUGS_OUT);
        assertThat(session.session().car().access()).contains(Access.PLUGS_OUT);

        session.undo();
        assertThat(session.session().car().access()).isEmpty();
    }

    @Test
    void theAnswerSaysWhatMayBeDoneBeforeTheCarIsBought() {
        model.permit(Access.PLUGS_OUT);
        model.runs(Runs.YES);

        assertThat(session.appraisal().carAnswer().plain().replace('\u00a0', ' '))
                .isEqualTo(
                        "A running 2.0 L in-line 4. With \"plugs out\" allowed, compression and leak-down can be done"
                                + " before you buy; the dyno and a coast-down cannot.");
    }

    @Test
    void aFactThatCannotBeReadIsRefusedAndTheOldOneStays() {
        List<String> refused = new ArrayList<>();
        model.tell(Fact.PRICE, "1400USD", refused::add);
        model.tell(Fact.PRICE, "cheap", refused::add);

        assertThat(refused).singleElement().asString().contains("\"cheap\"");
        assertThat(session.session().car().told(Fact.PRICE)).contains("1400USD");
    }

    @Test
    void anEmptyTextForgetsAFact() {
        model.tell(Fact.PRICE, "1400USD", refused -> {});
        model.tell(Fact.PRICE, "", refused -> {});

        assertThat(session.session().car().told(Fact.PRICE)).isEmpty();
    }

    @Test
    void theStandardIsChosenForTheWholeSession() {
        model.correctTo(Standard.ISO_1585);

        assertThat(session.session().standard()).isEqualTo(Standard.ISO_1585);
    }

    @Test
    void anotherEngineCanBeChosen() {
        EngineProfile six = SheetFixture.profile("i6-distributor");
        model.choose(six);

        assertThat(session.session().profile()).isEqualTo(six);
    }

    @Test
    void coilsOnPlugsLeaveNoWiresToPart() {
        assertThat(model.wires()).isEqualTo("none: a coil sits on every plug");
    }

    /** Firing order 1 8 4 3 6 5 7 2 with 1 3 5 7 on one bank: 5 and 7 follow each other side by side. */
    @Test
    void wiresOfNeighboursThatFireInSuccessionComeFirst() {
        model.choose(SheetFixture.profile("v8-distributor-order-a"));

        assertThat(model.wires()).startsWith("5 and 7 first of all: side by side");
    }
}
