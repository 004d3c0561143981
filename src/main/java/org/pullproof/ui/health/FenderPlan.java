package org.pullproof.ui.health;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.SVGPath;
import org.pullproof.drawing.EnginePlan;
import org.pullproof.engine.Bank;
import org.pullproof.engine.EngineProfile;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.Mark;

/** The cylinders at their places with what was read last, and the caution of the act on the line of the crank. */
final class FenderPlan extends VBox {
    private static final double SHIFT = 60;
    private static final String ARROW = "M38 7H3m7 -5l-7 5l7 5";
    private static final int MOST_BIG_LETTERS = 5;

    FenderPlan() {
        getStyleClass().add("fender-plan");
    }

    void show(EngineProfile engine, List<List<FenderScreen.Tile>> rows, String caution) {
        List<Bank> banks = EnginePlan.fromTop(engine);
        List<Node> parts = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            parts.add(row(rows.get(i), EnginePlan.stagger(engine, banks.get(i)) * SHIFT));
        }
        parts.add(1, crank(caution));
        getChildren().setAll(parts);
    }

    private static Node crank(String caution) {
        SVGPath arrow = new SVGPath();
        arrow.setContent(ARROW);
        arrow.getStyleClass().add("fender-arrow");
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        HBox crank = new HBox(
                8,
                arrow,
                Labels.whole("front", "fender-front"),
                space,
                Mark.CAUTION.node(),
                Labels.whole(caution, "fender-caution"));
        crank.setAlignment(Pos.CENTER_LEFT);
        crank.getStyleClass().add("fender-crank");
        return crank;
    }

    private static HBox row(List<FenderScreen.Tile> tiles, double shift) {
        HBox row = new HBox(8);
        row.setPadding(new Insets(0, Math.max(0, -2 * shift), 0, Math.max(0, 2 * shift)));
        tiles.forEach(tile -> row.getChildren().add(tile(tile)));
        return row;
    }

    private static Node tile(FenderScreen.Tile tile) {
        Label number = Labels.whole(String.valueOf(tile.number()), "fender-tile-number");
        boolean now = tile.state() == FenderScreen.State.NOW;
        boolean word = tile.figure().length() > MOST_BIG_LETTERS;
        Label figure = Labels.whole(
                now && tile.figure().isEmpty() ? "now" : tile.figure().replace('-', ' '),
                (now && tile.figure().isEmpty()) || word ? "fender-tile-word" : "fender-tile-figure");
        Label more = Labels.whole(tile.more(), "fender-tile-more");
        StackPane box = new StackPane(number, figure, more);
        StackPane.setAlignment(number, Pos.TOP_LEFT);
        StackPane.setAlignment(figure, Pos.BOTTOM_RIGHT);
        StackPane.setAlignment(more, Pos.TOP_RIGHT);
        box.getStyleClass().addAll("fender-tile", style(tile.state()));
        box.setMinWidth(0);
        box.setPrefWidth(1);
        HBox.setHgrow(box, Priority.ALWAYS);
        return box;
    }

    private static String style(FenderScreen.State state) {
        return "fender-" + state.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
