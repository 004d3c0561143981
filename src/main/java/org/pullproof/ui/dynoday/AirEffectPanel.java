package org.pullproof.ui.dynoday;

import javafx.geometry.HPos;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pullproof.ui.parts.Labels;

/** Beside the fields: what the air being typed would do to the figures, and what moves its factor. */
final class AirEffectPanel extends VBox {
    private final Label measured = Labels.wrapped("", "caption");
    private final GridPane rows = grid();
    private final GridPane moves = grid();
    private final VBox remarks = new VBox(6);

    AirEffectPanel() {
        super(8);
        getStyleClass().add("air-effect");
    }

    private static GridPane grid() {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("effect-grid");
        ColumnConstraints words = new ColumnConstraints();
        words.setHgrow(Priority.ALWAYS);
        grid.getColumnConstraints().setAll(words, right(), right());
        return grid;
    }

    private static ColumnConstraints right() {
        ColumnConstraints figures = new ColumnConstraints();
        figures.setHalignment(HPos.RIGHT);
        return figures;
    }

    void show(AirEffect effect) {
        getChildren().setAll(Labels.whole("What it would do to the figures", "section"));
        if (!effect.rows().isEmpty()) {
            measured.setText("A pull that measured " + effect.measured() + " at the wheels:");
            fill(effect);
            getChildren().addAll(measured, rows);
        } else {
            getChildren().add(Labels.wrapped("Stands here as soon as the air is typed.", "caption"));
        }
        if (!effect.moves().isEmpty()) {
            fillMoves(effect);
            getChildren().addAll(Labels.whole("What moves the factor", "section"), moves);
        }
        remarks.getChildren()
                .setAll(effect.remarks().stream()
                        .map(words -> Labels.wrapped(words, "caption"))
                        .toList());
        getChildren().add(remarks);
    }

    private void fill(AirEffect effect) {
        rows.getChildren().clear();
        rows.addRow(
                0,
                Labels.whole(effect.head(), "caption"),
                Labels.whole("factor", "caption"),
                Labels.whole("corrected, " + effect.unit(), "caption"));
        for (AirEffect.Row row : effect.rows()) {
            String style = row.struck() ? "struck" : row.chosen() ? "strong" : "body";
            rows.addRow(
                    rows.getRowCount(),
                    Labels.wrapped(row.read(), style),
                    Labels.whole(row.factor(), style),
                    Labels.whole(row.corrected(), style));
        }
    }

    private void fillMoves(AirEffect effect) {
        moves.getChildren().clear();
        effect.moves()
                .forEach(move -> moves.addRow(
                        moves.getRowCount(),
                        Labels.whole(move.part(), "body"),
                        Labels.whole(move.halfWidth(), "body")));
    }
}
