package org.pullproof.ui.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.pullproof.HeadlessFx;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@ExtendWith({HeadlessFx.class, ApplicationExtension.class})
class CheckedFieldTest {
    private final List<Quantity> taken = new ArrayList<>();
    private QuantityField field;
    private TextField elsewhere;

    @Start
    void start(Stage stage) {
        field = new QuantityField("Compression", Unit.PSI);
        field.onTaken(taken::add);
        elsewhere = new TextField();
        stage.setScene(new Scene(new VBox(field, elsewhere), 300, 200));
        stage.show();
    }

    @Test
    void aBareFigureTakesTheUnitBesideTheField(FxRobot robot) {
        robot.clickOn(field.field()).write("158");
        robot.clickOn(elsewhere);
        assertThat(taken).containsExactly(Quantity.of("158", Unit.PSI));
    }

    @Test
    void aRefusedEntryStaysWithItsSentenceAndTheFocusMayMoveOn(FxRobot robot) {
        robot.clickOn(field.field()).write("158 °C").push(KeyCode.TAB);
        assertThat(field.field().getText()).isEqualTo("158 °C");
        assertThat(field.lookupAll(".refusal"))
                .map(node -> ((Label) node).getText())
                .singleElement()
                .asString()
                .contains("a temperature, not a pressure");
        assertThat(elsewhere.isFocused()).isTrue();
        assertThat(taken).isEmpty();
    }

    @Test
    void anEntryReadsWithItsUnitOnceItIsLeftAndAsTypedWhileItIsEdited(FxRobot robot) {
        robot.clickOn(field.field()).write("1158").push(KeyCode.TAB);
        assertThat(field.field().getText()).isEqualTo("1,158\u00a0psi");
        assertThat(field.isChanged()).isFalse();

        robot.clickOn(field.field());
        assertThat(field.field().getText()).isEqualTo("1158");
        robot.clickOn(elsewhere);
        assertThat(taken).hasSize(1);
    }

    @Test
    void escapeBringsTheLastGoodEntryBack(FxRobot robot) {
        robot.clickOn(field.field()).write("158").push(KeyCode.ENTER);
        robot.write("x").push(KeyCode.ESCAPE);
        assertThat(field.field().getText()).isEqualTo("158");
        assertThat(field.isRefused()).isFalse();
    }
}
