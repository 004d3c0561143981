package org.pullproof.ui.health;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.pullproof.drawing.ReadingDots;
import org.pullproof.health.HealthFindings.CylinderFindings;
import org.pullproof.health.HealthFindings.State;
import org.pullproof.ui.parts.DrawingView;
import org.pullproof.units.Figures;
import org.pullproof.units.Shown;

/** Drop, dry compression and leak-down of all cylinders side by side: one more row of evidence where the window is wide. */
final class SideBySide extends HBox {
    private static final double HEIGHT = 140;

    private final HealthViewModel model;
    private final DrawingView drop = new DrawingView();
    private final DrawingView dry = new DrawingView();
    private final DrawingView leak = new DrawingView();

    SideBySide(HealthViewModel model) {
        super(24);
        this.model = model;
        getStyleClass().add("side-by-side");
        getChildren().setAll(drop, dry, leak);
        for (DrawingView view : List.of(drop, dry, leak)) {
            view.setPrefWidth(1);
            view.setMinHeight(HEIGHT);
            view.setPrefHeight(HEIGHT);
            HBox.setHgrow(view, Priority.ALWAYS);
        }
    }

    void show() {
        Figures figures = model.model().appraisal().figures();
        String psi = figures.unit(Shown.COMPRESSION).symbol();
        draw(drop, "Drop", "rpm; a small drop: it was not working", true, CylinderFindings::dropRpm);
        draw(
                dry,
                "Dry",
                psi,
                false,
                found -> found.dry()
                        .map(read -> OptionalDouble.of(
                                figures.unit(Shown.COMPRESSION).fromSi(read.si())))
                        .orElse(OptionalDouble.empty()));
        draw(leak, "Leak-down", "% of the air supplied", true, CylinderFindings::leakPercent);
    }

    private void draw(
            DrawingView view,
            String title,
            String detail,
            boolean fromZero,
            Function<CylinderFindings, OptionalDouble> figure) {
        List<CylinderFindings> found = model.model().appraisal().health().cylinders();
        Set<Integer> low = found.stream()
                .filter(cylinder -> cylinder.state() == State.LOW)
                .map(CylinderFindings::number)
                .collect(Collectors.toSet());
        ReadingDots.Test test = new ReadingDots.Test(
                title, detail, fromZero, found.stream().map(figure).toList(), low);
        view.show((width, height) -> ReadingDots.of(test, width, height));
    }
}
