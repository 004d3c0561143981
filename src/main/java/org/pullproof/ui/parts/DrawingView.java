package org.pullproof.ui.parts;

import java.util.List;
import java.util.Optional;
import javafx.css.CssMetaData;
import javafx.css.SimpleStyleableBooleanProperty;
import javafx.css.Styleable;
import javafx.css.StyleablePropertyFactory;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.layout.Region;
import org.pullproof.drawing.Drawing;

/**
 * Shows a drawing at the size it is given and paints it anew when the size, the picture or the light changes. Whether it is
 * night the stylesheet says ({@code -pp-night}), so a view needs nothing but its picture.
 */
public final class DrawingView extends Region {
    private static final StyleablePropertyFactory<DrawingView> FACTORY =
            new StyleablePropertyFactory<>(Region.getClassCssMetaData());

    private static final CssMetaData<DrawingView, Boolean> NIGHT =
            FACTORY.createBooleanCssMetaData("-pp-night", view -> view.night, false);

    /** Makes the drawing for a size in px. */
    @FunctionalInterface
    public interface Picture {
        Drawing at(double width, double height);
    }

    private final SimpleStyleableBooleanProperty night;
    private final Canvas canvas = new Canvas();
    private Optional<Picture> picture = Optional.empty();

    /** An empty view; see {@link #show}. */
    public DrawingView() {
        this.night = new SimpleStyleableBooleanProperty(NIGHT, this, "night", false) {
            @Override
            protected void invalidated() {
                requestLayout();
            }
        };
        getStyleClass().add("drawing-view");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        getChildren().add(canvas);
    }

    public DrawingView(Picture picture) {
        this();
        show(picture);
    }

    /** Shows another picture. */
    public void show(Picture next) {
        picture = Optional.of(next);
        requestLayout();
    }

    /** Shows nothing. */
    public void clear() {
        picture = Optional.empty();
        requestLayout();
    }

    @Override
    protected void layoutChildren() {
        double width = snapSizeX(getWidth() - snappedLeftInset() - snappedRightInset());
        double height = snapSizeY(getHeight() - snappedTopInset() - snappedBottomInset());
        canvas.setWidth(Math.max(0, width));
        canvas.setHeight(Math.max(0, height));
        canvas.relocate(snappedLeftInset(), snappedTopInset());
        if (width > 0 && height > 0) {
            paint(width, height);
        }
    }

    private void paint(double width, double height) {
        canvas.getGraphicsContext2D().clearRect(0, 0, width, height);
        picture.map(made -> made.at(width, height)).ifPresent(drawing -> {
            setAccessibleText(drawing.title());
            Palette palette = night.get() ? Palette.night() : Palette.paper();
            new CanvasPainter(canvas.getGraphicsContext2D(), palette).paint(drawing);
        });
    }

    @Override
    public List<CssMetaData<? extends Styleable, ?>> getCssMetaData() {
        return FACTORY.getCssMetaData();
    }
}
