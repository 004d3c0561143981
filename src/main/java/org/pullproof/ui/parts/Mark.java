package org.pullproof.ui.parts;

import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;
import javafx.scene.shape.SVGPath;

/** The small shapes that say a state again after its word (look 5): paths in a box of 16 px, coloured by the stylesheet. */
public enum Mark {
    RING("M12.5 8a4.5 4.5 0 1 1-9 0a4.5 4.5 0 1 1 9 0z", Paint.SHEET),
    BROKEN_RING("M12.5 8a4.5 4.5 0 1 1-9 0a4.5 4.5 0 1 1 9 0z", Paint.BROKEN),
    FILLED("M12.5 8a4.5 4.5 0 1 1-9 0a4.5 4.5 0 1 1 9 0z", Paint.FILL),
    HALF("M8 3.5a4.5 4.5 0 0 0 0 9z", Paint.HALF),
    CHOICE("M13.5 8a5.5 5.5 0 1 1-11 0a5.5 5.5 0 1 1 11 0z", Paint.SHEET),
    CHOSEN("M11 8a3 3 0 1 1-6 0a3 3 0 1 1 6 0z", Paint.CHOSEN),
    TICK("M3 8l3 3.5L12 4", Paint.LINE),
    POINTER("M3 3l9 5-9 5z", Paint.POINTER),
    POSTS("M3 3v10M12 3v10M3 8h9", Paint.GATE),
    TRIANGLE_UP("M8 2l6 11H2z", Paint.FILL),
    TRIANGLE_DOWN("M8 14L2 3h12z", Paint.FILL),
    TWO_BARS("M2 6h12M2 10.5h12", Paint.LINE),
    STRUCK_SQUARE("M3 3h10v10H3zM1 15L15 1", Paint.LINE),
    CAUTION("M4 3.5l8 4.5-8 4.5z", Paint.CAUTION);

    private enum Paint {
        SHEET,
        BROKEN,
        FILL,
        HALF,
        CHOSEN,
        LINE,
        POINTER,
        GATE,
        CAUTION
    }

    private static final double BOX = 16;

    private final String path;
    private final Paint paint;

    Mark(String path, Paint paint) {
        this.path = path;
        this.paint = paint;
    }

    /** A new node of this shape, 16 px square; it says nothing to a reader, the word beside it does. */
    public Node node() {
        StackPane box = new StackPane();
        box.getStyleClass().addAll("mark-box", "mark-" + paint.name().toLowerCase(Locale.ROOT));
        box.setMinSize(BOX, BOX);
        box.setMaxSize(BOX, BOX);
        if (paint == Paint.HALF || paint == Paint.CHOSEN) {
            box.getChildren().add(shape(paint == Paint.HALF ? RING.path : CHOICE.path, "ring"));
        }
        box.getChildren().add(shape(path, "shape"));
        box.setMouseTransparent(true);
        return box;
    }

    private static SVGPath shape(String path, String styleClass) {
        SVGPath shape = new SVGPath();
        shape.setContent(path);
        shape.getStyleClass().add(styleClass);
        shape.setManaged(false);
        return shape;
    }
}
