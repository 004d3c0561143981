package org.pullproof.ui.health;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntConsumer;
import javafx.event.Event;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.pullproof.drawing.CrankLine;
import org.pullproof.drawing.EnginePlan;
import org.pullproof.engine.Bank;
import org.pullproof.engine.EngineProfile;
import org.pullproof.ui.parts.DrawingView;

/** The tiles at the places of their cylinders. Arrows move by place on the plan, Enter or a figure types its reading. */
final class EngineTiles extends VBox {
    private static final double STAGGER = 42;
    private static final int NARROW_FROM = 5;

    private final HealthViewModel model;
    private final IntConsumer open;
    private final Map<Integer, TileView> tiles = new HashMap<>();
    private final DrawingView crank = new DrawingView();
    private EngineProfile built;

    /**
     * @param open what happens when a cylinder is opened
     */
    EngineTiles(HealthViewModel model, IntConsumer open) {
        this.model = model;
        this.open = open;
        this.built = model.engine();
        getStyleClass().add("engine-tiles");
        crank.getStyleClass().add("crank");
        build();
        addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        addEventHandler(KeyEvent.KEY_TYPED, this::figure);
    }

    /** Lays the tiles out anew when the car got another engine. */
    private void build() {
        built = model.engine();
        tiles.clear();
        getChildren().clear();
        List<Bank> banks = EnginePlan.fromTop(model.engine());
        banks.forEach(bank -> getChildren().add(bank(bank)));
        getChildren().add(1, crank);
    }

    private HBox bank(Bank bank) {
        HBox row = new HBox();
        row.getStyleClass().add("bank");
        boolean narrow = bank.cylinders().size() >= NARROW_FROM;
        for (int cylinder : bank.cylinders()) {
            TileView tile = new TileView(narrow);
            HBox.setHgrow(tile, Priority.ALWAYS);
            tile.setPrefWidth(1);
            boolean few = bank.cylinders().size() < NARROW_FROM
                    && model.engine().banks().size() == 1;
            if (few) {
                tile.getStyleClass().add("few");
            }
            tile.focusedProperty().addListener((of, before, focused) -> focused(cylinder, focused));
            tile.setOnMouseClicked(clicked -> open(cylinder, clicked.getClickCount()));
            tiles.put(cylinder, tile);
            row.getChildren().add(tile);
        }
        double shift = EnginePlan.stagger(model.engine(), bank) * STAGGER;
        row.setPadding(new Insets(0, Math.max(0, -2 * shift), 0, Math.max(0, 2 * shift)));
        return row;
    }

    private void open(int cylinder, int clicks) {
        if (clicks > 1) {
            open.accept(cylinder);
        }
    }

    private void focused(int cylinder, boolean focused) {
        if (focused) {
            model.entry().cylinderProperty().set(cylinder);
        }
    }

    void show() {
        if (!built.equals(model.engine())) {
            build();
        }
        int chosen = model.entry().cylinderProperty().get();
        tiles.forEach((number, tile) -> tile.show(model.tile(number), number == chosen));
        crank.show((width, height) -> CrankLine.of(model.crankWords(), width, height));
    }

    Region tile(int cylinder) {
        return java.util.Objects.requireNonNull(tiles.get(cylinder), "no such cylinder");
    }

    /** A figure typed over a tile goes into the field of its reading. */
    private void figure(KeyEvent typed) {
        boolean digit = typed.getCharacter().chars().anyMatch(Character::isDigit);
        if (digit && !typed.isShortcutDown()) {
            open.accept(model.entry().cylinderProperty().get());
            Node field = getScene().getFocusOwner();
            Event.fireEvent(field, typed.copyFor(field, field));
            typed.consume();
        }
    }

    private void key(KeyEvent key) {
        int at = model.entry().cylinderProperty().get();
        KeyCode code = key.getCode();
        if (code == KeyCode.ENTER || code == KeyCode.SPACE) {
            open.accept(at);
        } else if (code.isArrowKey()) {
            tile(Neighbours.of(model.rows(), at, code)).requestFocus();
        } else {
            return;
        }
        key.consume();
    }
}
