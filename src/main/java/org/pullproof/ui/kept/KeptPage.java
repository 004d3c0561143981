package org.pullproof.ui.kept;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.pullproof.app.KeptSittings.Sitting;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.SheetStyle;

/** What is kept of earlier sittings: when, what was done since, and the way back. */
public final class KeptPage extends BorderPane {
    private final KeptViewModel model;
    private final Runnable leave;
    private final ListView<Sitting> list = new ListView<>();

    /**
     * @param leave closes the page
     */
    public KeptPage(KeptViewModel model, Runnable leave) {
        this.model = model;
        this.leave = leave;
        getStyleClass().add("values-page");
        SheetStyle.on(this);
        list.setId("kept-versions");
        list.setAccessibleText("Kept versions");
        list.setCellFactory(of -> new SittingCell());
        list.setItems(model.sittingsProperty());
        list.addEventHandler(KeyEvent.KEY_PRESSED, this::enter);
        // a filter, for the list keeps Escape to itself
        addEventFilter(KeyEvent.KEY_PRESSED, this::escape);
        model.sittingsProperty()
                .addListener((of, before, after) -> list.getSelectionModel().selectFirst());
        list.getSelectionModel().selectFirst();
        setTop(head());
        setCenter(list);
    }

    private VBox head() {
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        Button back = Actions.plain("Back to the chosen one", "Enter");
        back.setId("back-to-version");
        back.setOnAction(pressed -> back());
        Button close = Actions.plain("Close", "Esc");
        close.setOnAction(pressed -> leave.run());
        HBox line = new HBox(12, Labels.whole("Kept versions", "title"), space, back, close);
        line.setAlignment(Pos.CENTER_LEFT);
        Label answer = Labels.wrapped("", "answer-line");
        answer.textProperty().bind(model.answerProperty());
        VBox head = new VBox(4, line, answer);
        head.getStyleClass().add("values-head");
        return head;
    }

    private void back() {
        Optional.ofNullable(list.getSelectionModel().getSelectedItem()).ifPresent(model::back);
    }

    private void enter(KeyEvent key) {
        if (key.getCode() == KeyCode.ENTER) {
            back();
            key.consume();
        }
    }

    private void escape(KeyEvent key) {
        if (key.getCode() == KeyCode.ESCAPE) {
            leave.run();
            key.consume();
        }
    }

    /** The list is where the page begins. */
    @Override
    public void requestFocus() {
        list.requestFocus();
    }

    /** When it was kept on the left, what was done since on the right. */
    private final class SittingCell extends ListCell<Sitting> {
        @Override
        protected void updateItem(Sitting sitting, boolean empty) {
            super.updateItem(sitting, empty);
            setText(null);
            setGraphic(empty || sitting == null ? null : line(sitting));
        }

        private HBox line(Sitting sitting) {
            Label since = new Label("since then: " + sitting.difference());
            since.setMaxWidth(Double.MAX_VALUE);
            HBox.setHgrow(since, Priority.ALWAYS);
            HBox line = new HBox(24, Labels.whole(sitting.version().when(), "strong"), since);
            line.prefWidthProperty().bind(list.widthProperty().subtract(40));
            return line;
        }
    }
}
