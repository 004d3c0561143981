package org.pullproof.ui.health;

import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pullproof.ui.health.HealthViewModel.Row;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.Tables;

/** What was read of the chosen cylinder; Delete takes the selected reading away. */
final class ReadingsTable extends VBox {
    private static final double ROW = 26;

    private final HealthViewModel model;
    private final TableView<Row> table = new TableView<>();

    ReadingsTable(HealthViewModel model) {
        this.model = model;
        table.setId("readings");
        table.getStyleClass().add("dense");
        table.setAccessibleText("Readings of what is chosen");
        table.getColumns().add(Tables.words("Test", 116, Row::test));
        table.getColumns().add(Tables.wrapping("Read", 118, Row::value));
        table.getColumns().add(Tables.wrapping("How", 220, Row::how));
        table.getColumns().add(Tables.words("Taken in", 108, Row::taken));
        table.setColumnResizePolicy(TableView.CONSTRAINED_RESIZE_POLICY_FLEX_LAST_COLUMN);
        Tables.letChoose(table);
        table.setMinHeight(3.5 * ROW);
        VBox.setVgrow(table, Priority.ALWAYS);
        table.setOnKeyPressed(key -> {
            if (key.getCode() == KeyCode.DELETE) {
                removeSelected();
            }
        });
    }

    private void removeSelected() {
        Row selected = table.getSelectionModel().getSelectedItem();
        if (selected != null) {
            model.remove(selected.reading());
        }
    }

    void show() {
        Tables.show(table, model.readings());
        if (table.getItems().isEmpty()) {
            getChildren().setAll(Labels.wrapped("Nothing is recorded here yet.", "second"));
        } else {
            getChildren()
                    .setAll(
                            table,
                            Labels.whole("Delete takes the selected reading away; undo brings it back.", "caption"));
        }
    }
}
