package org.pullproof.ui.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import javafx.scene.Scene;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.HeadlessFx;
import org.pullproof.car.Fact;
import org.pullproof.units.Figures;
import org.pullproof.units.UnitSystem;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@ExtendWith({HeadlessFx.class, ApplicationExtension.class})
class FactFieldTest {
    private final Map<Fact, String> told = new HashMap<>();
    private final Map<Fact, FactField> fields = new HashMap<>();
    private TextField elsewhere;

    @Start
    void start(Stage stage) {
        VBox page = new VBox();
        for (Fact fact : Fact.values()) {
            FactField field = new FactField(fact, () -> new Figures(UnitSystem.US), told::put);
            fields.put(fact, field);
            page.getChildren().add(field);
        }
        elsewhere = new TextField();
        page.getChildren().add(elsewhere);
        stage.setScene(new Scene(page, 400, 780));
        stage.show();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "ELEVATION; 820; 820 ft; 820 ft",
                "ODOMETER; 135700km; 135700 km; 135,700 km",
                "PRICE; $6,400; 6400USD; $6,400",
                "BUDGET; 1500EUR; 1500EUR; 1,500 EUR",
                "BAND; 2600-5000rpm; 2600-5000rpm; 2,600 to 5,000 rpm"
            })
    void whatIsTypedIsKeptAsItCanBeReadAndShownAsPeopleWriteIt(
            Fact fact, String typed, String kept, String shown, FxRobot robot) {
        FactField field = Objects.requireNonNull(fields.get(fact));
        robot.clickOn(field.field()).write(typed);
        robot.interact(elsewhere::requestFocus);

        assertThat(told).containsEntry(fact, kept);
        assertThat(field.field().getText().replace('\u00a0', ' ')).isEqualTo(shown);
    }

    @Test
    void thousandsThatMayBeDecimalsAreAskedAbout(FxRobot robot) {
        FactField field = Objects.requireNonNull(fields.get(Fact.ODOMETER));
        robot.clickOn(field.field()).write("84,300mi");
        robot.interact(elsewhere::requestFocus);

        assertThat(field.isRefused()).isTrue();
        assertThat(field.field().getText()).isEqualTo("84,300mi");
        assertThat(told).isEmpty();
    }
}
