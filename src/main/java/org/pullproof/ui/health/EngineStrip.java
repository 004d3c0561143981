package org.pullproof.ui.health;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pullproof.health.TestKind;
import org.pullproof.ui.parts.CheckedField;
import org.pullproof.ui.parts.Labels;

/** Signs of the whole engine, typed where they stand. */
final class EngineStrip extends HBox {
    private final HealthViewModel model;
    private final Runnable openStarter;
    private final Label known = Labels.whole("", "caption");
    private final Map<TestKind, Cell> cells = new EnumMap<>(TestKind.class);
    private final Button starter = new Button();

    /**
     * @param openStarter what happens when the starter's humps are to be typed, cylinder by cylinder
     */
    EngineStrip(HealthViewModel model, Runnable openStarter) {
        this.model = model;
        this.openStarter = openStarter;
        getStyleClass().add("engine-strip");
        getChildren().add(head());
        for (WholeEngine sign : model.wholeEngine()) {
            Cell cell = new Cell(sign);
            cells.put(sign.test(), cell);
            getChildren().add(cell);
        }
        getChildren().add(starterCell());
        getChildren().forEach(cell -> HBox.setHgrow(cell, Priority.ALWAYS));
    }

    private Node head() {
        VBox head = new VBox(2, Labels.whole("Whole engine", "strong"), known);
        head.getStyleClass().add("strip-cell");
        return head;
    }

    private Node starterCell() {
        starter.getStyleClass().add("strip-button");
        starter.setMaxWidth(Double.MAX_VALUE);
        starter.setOnAction(pressed -> openStarter.run());
        VBox cell = new VBox(
                Labels.whole("Starter humps", "caption"), starter, Labels.whole("cylinder by cylinder", "caption"));
        cell.getStyleClass().add("strip-cell");
        return cell;
    }

    void show() {
        List<WholeEngine> signs = model.wholeEngine();
        signs.forEach(sign -> cell(sign.test()).show(sign));
        String humps = model.starterHumps();
        boolean read = !humps.equals(Tile.NOT_MEASURED);
        starter.setText(humps);
        starter.setAccessibleText("Starter humps: " + (read ? humps : "not done"));
        known.setText(model.signsKnown() + " of " + model.signs() + " known");
    }

    private Cell cell(TestKind test) {
        return java.util.Objects.requireNonNull(cells.get(test), test.key());
    }

    private final class Cell extends VBox {
        private final CheckedField<String> field;
        private final Label state;

        Cell(WholeEngine sign) {
            getStyleClass().add("strip-cell");
            field = new CheckedField<>(sign.name(), typed -> model.readWhole(sign.test(), typed));
            field.getStyleClass().add("fact-field");
            field.field().setPromptText(Tile.NOT_MEASURED);
            field.field().setId("whole-" + sign.test().key());
            field.field().setPrefColumnCount(6);
            field.field().setTooltip(new javafx.scene.control.Tooltip(sign.hint()));
            field.onTaken(read -> keep(sign.test(), read));
            state = Labels.wrapped("", "caption");
            field.field().focusedProperty().addListener((of, before, focused) -> hint(focused, sign));
            getChildren().setAll(Labels.whole(sign.name(), "caption"), field, state);
        }

        private void hint(boolean focused, WholeEngine sign) {
            state.setText(focused ? sign.hint() : sign.known() ? "read" : "not done");
        }

        private void keep(TestKind test, String read) {
            try {
                model.keepWhole(test, read);
            } catch (IllegalArgumentException refused) {
                field.refuse(String.valueOf(refused.getMessage()));
            }
        }

        void show(WholeEngine sign) {
            if (!field.isRefused() && !field.isChanged()) {
                field.show(sign.known() ? sign.value() : "");
            }
            state.setText(sign.known() ? "read" : "not done");
            getStyleClass().remove("unknown");
            if (!sign.known()) {
                getStyleClass().add("unknown");
            }
        }
    }
}
