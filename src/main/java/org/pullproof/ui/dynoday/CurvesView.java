package org.pullproof.ui.dynoday;

import java.util.Optional;
import java.util.OptionalInt;
import javafx.scene.AccessibleRole;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.StackPane;
import org.pullproof.drawing.ChartPanels;
import org.pullproof.drawing.Crosshair;
import org.pullproof.drawing.PowerChart;
import org.pullproof.drawing.Speeds;
import org.pullproof.ui.parts.DrawingView;

/** The curves with a crosshair on a layer above them: pointed at with the mouse or moved by keys; a drag or the wheel zooms. */
final class CurvesView extends StackPane {
    private static final int STEP = 20;
    private static final int WIDE_STEP = 200;
    private static final double SMALLEST_DRAG = 8;
    private static final double WHEEL = 0.8;

    private final ChartViewModel model;
    private final DrawingView curves = new DrawingView();
    private final DrawingView above = new DrawingView();
    private Optional<Double> dragFrom = Optional.empty();

    CurvesView(ChartViewModel model) {
        this.model = model;
        getStyleClass().add("power-chart");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        above.setMouseTransparent(true);
        getChildren().setAll(curves, above);
        model.panelsProperty().addListener((of, before, after) -> show());
        model.crosshairProperty().addListener((of, before, after) -> showCrosshair());
        setOnMouseMoved(mouse -> model.point(rpmAt(mouse.getX())));
        setOnMouseExited(mouse -> model.point(OptionalInt.empty()));
        setOnMousePressed(this::pressed);
        setOnMouseDragged(this::dragged);
        setOnMouseReleased(this::released);
        setOnScroll(this::scrolled);
        show();
    }

    private void show() {
        ChartPanels panels = model.panelsProperty().get();
        curves.show((width, height) -> PowerChart.of(panels, width, height));
        showCrosshair();
    }

    private void showCrosshair() {
        ChartPanels panels = model.panelsProperty().get();
        Optional<Integer> rpm = model.crosshairProperty().get();
        if (rpm.isEmpty()) {
            above.clear();
            setAccessibleText("Curves of power, torque and difference over engine speed; arrows move a crosshair");
            return;
        }
        above.show((width, height) -> Crosshair.at(panels, rpm.get(), width, height));
        setAccessibleText(
                Crosshair.at(panels, rpm.get(), getWidth(), getHeight()).title());
    }

    private OptionalInt rpmAt(double x) {
        return Crosshair.rpmAt(model.panelsProperty().get(), x, getWidth(), getHeight());
    }

    private void pressed(MouseEvent mouse) {
        requestFocus();
        dragFrom = rpmAt(mouse.getX()).isPresent() ? Optional.of(mouse.getX()) : Optional.empty();
        if (mouse.getClickCount() == 2) {
            model.zoomAll();
        }
    }

    private void dragged(MouseEvent mouse) {
        chosen(mouse).ifPresent(range -> {
            ChartPanels panels = model.panelsProperty().get();
            above.show((width, height) -> Crosshair.range(panels, range, width, height));
        });
    }

    private void released(MouseEvent mouse) {
        Optional<Speeds> range = chosen(mouse);
        dragFrom = Optional.empty();
        range.ifPresent(model::zoomTo);
        showCrosshair();
    }

    /** The speeds between press and mouse, if it went far enough to be meant. */
    private Optional<Speeds> chosen(MouseEvent mouse) {
        double x = Math.max(1, Math.min(getWidth() - 1, mouse.getX()));
        OptionalInt to = rpmAt(x);
        return dragFrom.filter(from -> Math.abs(from - x) >= SMALLEST_DRAG && to.isPresent())
                .map(from -> Speeds.between(rpmAt(from).orElseThrow(), to.getAsInt()));
    }

    private void scrolled(ScrollEvent wheel) {
        OptionalInt about = rpmAt(wheel.getX());
        boolean zooms = wheel.isControlDown() && wheel.getDeltaY() != 0 && about.isPresent();
        if (zooms) {
            model.scale(wheel.getDeltaY() > 0 ? WHEEL : 1 / WHEEL, Optional.of(about.getAsInt()));
            wheel.consume();
        }
    }

    /** Moves the crosshair or zooms, if the key says so. */
    void key(KeyEvent key) {
        int step = key.isShiftDown() ? WIDE_STEP : STEP;
        boolean used = true;
        switch (key.getCode()) {
            case LEFT -> model.move(-step);
            case RIGHT -> model.move(step);
            case PLUS, ADD, EQUALS -> model.zoomIn();
            case MINUS, SUBTRACT -> model.zoomOut();
            case DIGIT0, NUMPAD0 -> model.zoomAll();
            default -> used = false;
        }
        if (key.getCode() == KeyCode.ESCAPE && model.crosshairProperty().get().isPresent()) {
            model.point(OptionalInt.empty());
            used = true;
        }
        if (used) {
            key.consume();
        }
    }
}
