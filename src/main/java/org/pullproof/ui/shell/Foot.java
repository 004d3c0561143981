package org.pullproof.ui.shell;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.pullproof.advice.Appraisal;
import org.pullproof.ui.parts.SentenceFlow;
import org.pullproof.units.Figures;
import org.pullproof.units.Sentence;
import org.pullproof.units.Shown;
import org.pullproof.weather.AirReading;
import org.pullproof.weather.AirState;
import org.pullproof.weather.Factor;
import org.pullproof.weather.MoistAir;

/** When it was saved, the air of the day, how many cautions stand open. */
final class Foot extends HBox {
    private final SentenceFlow air = new SentenceFlow("foot-part");
    private final Label cautions = new Label();

    Foot(SessionViewModel model) {
        getStyleClass().add("foot");
        Label saved = new Label();
        saved.textProperty().bind(model.savedProperty());
        saved.getStyleClass().add("foot-part");
        saved.setMinWidth(USE_PREF_SIZE);
        cautions.getStyleClass().addAll("foot-part", "last");
        cautions.setMinWidth(USE_PREF_SIZE);
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        getChildren().setAll(saved, air, space, cautions);
        model.appraisalProperty().addListener((of, before, after) -> show(after, model.today()));
        show(model.appraisal(), model.today());
    }

    private void show(Appraisal appraisal, LocalDate today) {
        air.show(new Sentence("Air of this day: " + airWords(appraisal, today)));
        int open = appraisal.next().cautions().size();
        cautions.setText(open == 1 ? "1 open caution" : open + " open cautions");
    }

    /** "98.9 kPa, 22 °C, 48 % (typed 12:10) → 1.011 SAE J1349", with bold marks. */
    static String airWords(Appraisal appraisal, LocalDate today) {
        Optional<AirReading> latest = appraisal.dyno().latestAir();
        if (latest.isEmpty()) {
            return "not typed yet";
        }
        AirReading air = latest.get();
        Figures figures = appraisal.figures();
        AirState state = air.state();
        String read = figures.of(state.pressure().pascal(), Shown.AIR_PRESSURE) + ", "
                + figures.of(state.temperature().kelvin(), Shown.AIR_TEMPERATURE) + ", "
                + Figures.percent(100 * MoistAir.relativeHumidity(state), 0);
        return "**" + read + "** (typed " + when(air.time(), today) + ")"
                + appraisal.dyno().latestFactor().map(Foot::factorWords).orElse("");
    }

    private static String factorWords(Factor factor) {
        return " → **" + Figures.number(factor.value(), 3) + "** "
                + factor.standard().words();
    }

    private static String when(LocalDateTime time, LocalDate today) {
        String pattern = time.toLocalDate().equals(today) ? "HH:mm" : "d MMM yyyy, HH:mm";
        return time.format(DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH));
    }
}
