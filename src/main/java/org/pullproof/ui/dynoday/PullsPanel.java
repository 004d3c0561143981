package org.pullproof.ui.dynoday;

import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TableRow;
import javafx.scene.control.TableView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pullproof.drawing.LineStyle;
import org.pullproof.ui.dynoday.DynoDayViewModel.Row;
import org.pullproof.ui.parts.CheckedField;
import org.pullproof.ui.parts.DrawingView;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.Tables;

/** The pulls in order, each with the line of its setup; X takes the selected one out and asks why. */
final class PullsPanel extends VBox {
    private static final PseudoClass EXCLUDED = PseudoClass.getPseudoClass("excluded");
    private static final double ROW = 22;

    private final DynoDayViewModel model;
    private final TableView<Row> table = new TableView<>();
    private final Label caption = Labels.whole("", "caption");
    private final VBox remarks = new VBox();
    private final CheckedField<String> reason = new CheckedField<>("Why this pull does not count", text -> text);
    private boolean showing;

    PullsPanel(DynoDayViewModel model) {
        this.model = model;
        getStyleClass().add("pulls-panel");
        table.setId("pulls");
        table.getStyleClass().addAll("dense", "pulls");
        table.setFixedCellSize(ROW);
        table.setMinHeight(5 * ROW);
        table.setAccessibleText("Pulls");
        table.getColumns().add(Tables.nodes("", 34, this::line));
        table.getColumns().add(Tables.words("Pull", 86, Row::name));
        table.getColumns().add(Tables.words("at", 42, Row::time));
        table.getColumns().add(Tables.figures("band", 56, Row::band));
        table.getColumns().add(Tables.words("flag", 62, Row::flag));
        table.setColumnResizePolicy(TableView.CONSTRAINED_RESIZE_POLICY_ALL_COLUMNS);
        Tables.letChoose(table);
        table.setRowFactory(of -> new PullRow());
        table.getSelectionModel().selectedItemProperty().addListener((of, before, row) -> selected(row));
        VBox.setVgrow(table, Priority.ALWAYS);
        reason.field().setId("exclude-reason");
        reason.field().setPromptText("reason, then Enter");
        reason.field().setOnAction(entered -> exclude());
        HBox head = new HBox(8, Labels.whole("Pulls", "section"), caption);
        head.setAlignment(javafx.geometry.Pos.BASELINE_LEFT);
        getChildren().setAll(head, table, remarks);
    }

    private Node line(Row row) {
        boolean chosen = row.pull().pull().setup().equals(model.chosenProperty().get());
        DrawingView view = new DrawingView((width, height) -> LineStyle.sample(row.order(), chosen));
        view.setMinSize(28, 10);
        view.setPrefSize(28, 10);
        view.setMaxSize(28, 10);
        return view;
    }

    private static final class PullRow extends TableRow<Row> {
        @Override
        protected void updateItem(Row row, boolean empty) {
            super.updateItem(row, empty);
            pseudoClassStateChanged(EXCLUDED, !empty && row != null && row.excluded());
        }
    }

    private void selected(Row row) {
        if (row == null || showing) {
            return;
        }
        model.choose(row.pull());
        remark(Optional.of(row));
    }

    private Optional<Row> selected() {
        return Optional.ofNullable(table.getSelectionModel().getSelectedItem());
    }

    private void remark(Optional<Row> row) {
        remarks.getChildren()
                .setAll(row.map(of -> model.remarks(of.pull())).orElse(List.of()).stream()
                        .map(words -> Labels.wrapped(words, "caption"))
                        .toList());
        row.ifPresent(of -> remarks.getChildren()
                .add(Labels.whole(of.excluded() ? "X counts it again" : "X takes it out and asks why", "caption")));
    }

    /** Asks why the selected pull does not count, or counts it again. */
    void takeOut() {
        selected().ifPresent(row -> {
            if (row.excluded()) {
                model.include(row.pull());
            } else {
                reason.show("");
                remarks.getChildren().setAll(Labels.whole("Why does " + row.name() + " not count?", "caption"), reason);
                // Later, or the X that asked is typed into the field.
                Platform.runLater(reason.field()::requestFocus);
            }
        });
    }

    private void exclude() {
        selected().ifPresent(row -> {
            try {
                model.exclude(row.pull(), reason.field().getText());
                table.requestFocus();
            } catch (IllegalArgumentException noReason) {
                reason.refuse(String.valueOf(noReason.getMessage()));
            }
        });
    }

    void show() {
        Optional<String> before = selected().map(Row::name);
        showing = true;
        caption.setText(model.listCaption());
        Tables.show(table, model.rows());
        showing = false;
        Optional<Row> again = table.getItems().stream()
                .filter(row -> before.filter(row.name()::equals).isPresent())
                .findFirst();
        again.ifPresent(row -> table.getSelectionModel().select(row));
        remark(again);
    }

    /** Paints the lines anew when another setup is looked at. */
    void refreshLines() {
        table.refresh();
    }
}
