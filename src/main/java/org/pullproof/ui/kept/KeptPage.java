package org.pullproof.ui.kept;

import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.pullproof.app.KeptSittings.Sitting;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.PageHead;
import org.pullproof.ui.parts.SheetStyle;

/** What is kept of earlier sittings: when, what was done since, and the way back. */
public final class KeptPage extends BorderPane {
    private final KeptViewModel model;
    private final ListView<Sitting> list = new ListView<>();

    /**
     * @param leave closes the page
     */
    public KeptPage(KeptViewModel model, Runnable leave) {
        this.model = model;
        getStyleClass().add("values-page");
        SheetStyle.on(this);
        list.setId("kept-versions");
        list.setAccessibleText("Kept versions");
        list.setCellFactory(of -> new SittingCell());
        list.setItems(model.sittingsProperty());
        list.addEventHandler(KeyEvent.KEY_PRESSED, this::enter);
        Button back = Actions.plain("Back to the chosen one", "Enter");
        back.setId("back-to-version");
        back.setOnAction(pressed -> back());
        back.disableProperty()
                .bind(list.getSelectionModel().selectedItemProperty().isNull());
        PageHead head = new PageHead("Kept versions", leave, back);
        head.sentenceProperty().bind(model.answerProperty());
        addEventFilter(KeyEvent.KEY_PRESSED, head::escape);
        model.sittingsProperty()
                .addListener((of, before, after) -> list.getSelectionModel().selectFirst());
        list.getSelectionModel().selectFirst();
        setTop(head);
        setCenter(list);
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
