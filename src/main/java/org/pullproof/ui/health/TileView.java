package org.pullproof.ui.health;

import java.util.List;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.SVGPath;
import org.pullproof.health.HealthFindings.State;

/** A cylinder where it stands: number, words, figures. The shape of its border says the words again. */
final class TileView extends StackPane {
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");
    private static final String CORNER = "M0 0h18v18z";
    private static final String CUT = "M0 0L15 15";
    private static final String HATCH = "M0 16L16 0M0 32L16 16M0 48L16 32M0 64L16 48M0 80L16 64M0 96L16 80M0 112L16 96";

    private final Label number = new Label();
    private final Label words = new Label();
    private final GridPane values = new GridPane();
    private final SVGPath sign = new SVGPath();
    private final boolean narrow;

    /**
     * @param narrow whether only the figures that matter most have room
     */
    TileView(boolean narrow) {
        this.narrow = narrow;
        getStyleClass().add("tile");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.BUTTON);
        setMaxWidth(Double.MAX_VALUE);
        setAlignment(Pos.TOP_RIGHT);
        number.getStyleClass().add("tile-number");
        number.setMinWidth(Region.USE_PREF_SIZE);
        words.getStyleClass().add("tile-words");
        words.setWrapText(true);
        sign.getStyleClass().add("tile-sign");
        sign.setManaged(false);
        getChildren().setAll(content(), sign);
        setOnMousePressed(pressed -> requestFocus());
    }

    private Region content() {
        HBox head = new HBox(8, number, words);
        HBox.setHgrow(words, Priority.ALWAYS);
        Region space = new Region();
        VBox.setVgrow(space, Priority.ALWAYS);
        return new VBox(head, space, values);
    }

    void show(Tile tile, boolean chosen) {
        number.setText(String.valueOf(tile.number()));
        words.setText(tile.words());
        setAccessibleText(tile.spoken());
        pseudoClassStateChanged(CHOSEN, chosen);
        for (State state : State.values()) {
            pseudoClassStateChanged(PseudoClass.getPseudoClass(styled(state)), state == tile.state());
        }
        sign.setContent(
                switch (tile.state()) {
                    case LOW -> CORNER;
                    case IN_DOUBT -> CUT;
                    case NOT_COMPARABLE -> HATCH;
                    case LEVEL, NOT_MEASURED -> "";
                });
        showValues(tile.values());
    }

    private static String styled(State state) {
        return state.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }

    private void showValues(List<Tile.Value> all) {
        List<Tile.Value> shown =
                all.stream().filter(value -> value.always() || !narrow).toList();
        values.getChildren().clear();
        values.getColumnConstraints()
                .setAll(shown.stream().map(value -> column(shown.size())).toList());
        for (int i = 0; i < shown.size(); i++) {
            values.add(value(shown.get(i)), i, 0);
        }
    }

    private static ColumnConstraints column(int count) {
        ColumnConstraints column = new ColumnConstraints();
        column.setPercentWidth(100.0 / count);
        return column;
    }

    private static VBox value(Tile.Value value) {
        Label name = new Label(value.name());
        name.getStyleClass().addAll("caption", "tile-caption");
        name.setMinWidth(Region.USE_PREF_SIZE);
        Label figure = new Label(value.figure());
        figure.getStyleClass().addAll("tile-figure", value.measured() ? "measured" : "faint");
        figure.setMinWidth(Region.USE_PREF_SIZE);
        return new VBox(name, figure);
    }

    @Override
    protected void layoutChildren() {
        super.layoutChildren();
        sign.relocate(
                getWidth()
                        - (sign.getContent().equals(CUT)
                                ? 15
                                : sign.getContent().equals(HATCH) ? 16 : 18),
                0);
        sign.setClip(new javafx.scene.shape.Rectangle(0, 0, 18, getHeight()));
    }
}
