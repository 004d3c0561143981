package org.pullproof.ui.values;

import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.pullproof.session.TradeConstant;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.PageHead;
import org.pullproof.ui.parts.SheetStyle;
import org.pullproof.ui.shell.Focus;

/** Every value that the program judges by: found, read, edited for this session, put back. */
public final class ValuesPage extends BorderPane {
    private final ValuesViewModel model;
    private final TextField search = new TextField();
    private final ListView<TradeConstant> list = new ListView<>();
    private final ValueForm form;
    private final PageHead head;

    /**
     * @param leave closes the page
     */
    public ValuesPage(ValuesViewModel model, Runnable leave) {
        this.model = model;
        this.form = new ValueForm(model);
        Button reset = Actions.plain("All back to the program's own", "");
        reset.setId("reset-values");
        reset.setOnAction(pressed -> model.reset());
        this.head = new PageHead("What the program judges by", leave, search, reset);
        getStyleClass().add("values-page");
        SheetStyle.on(this);
        search.setId("search-values");
        search.setPromptText("search: ring, throttle, chance");
        search.setAccessibleText("Search the values");
        search.textProperty().addListener((of, before, text) -> find());
        list.setId("values");
        list.setAccessibleText("Values");
        list.setCellFactory(of -> new ConstantCell());
        list.getSelectionModel()
                .selectedItemProperty()
                .addListener((of, before, constant) -> form.show(Optional.ofNullable(constant)));
        list.addEventHandler(KeyEvent.KEY_PRESSED, this::enterForm);
        addEventHandler(KeyEvent.KEY_PRESSED, head::escape);
        setTop(head);
        setCenter(list);
        setRight(right());
        model.model().appraisalProperty().addListener((of, before, after) -> show());
        find();
        show();
    }

    private ScrollPane right() {
        ScrollPane scroll = new ScrollPane(form);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        scroll.getStyleClass().add("values-right");
        return scroll;
    }

    private void find() {
        list.getItems().setAll(model.found(search.getText()));
        list.getSelectionModel().selectFirst();
    }

    private void show() {
        head.sentenceProperty()
                .set(
                        model.answer()
                                + " Judgement and common practice may be edited, published figures and steps of the arithmetic may not.");
        list.refresh();
        boolean editing = Focus.isIn(form);
        form.show(Optional.ofNullable(list.getSelectionModel().getSelectedItem()));
        if (editing) {
            list.requestFocus();
        }
    }

    private void enterForm(KeyEvent key) {
        if (key.getCode() == KeyCode.ENTER) {
            form.focusFirst();
            key.consume();
        }
    }

    /** The search is where the page begins. */
    @Override
    public void requestFocus() {
        search.requestFocus();
    }

    /** The words on the left, the value on the right, an edited one strong. */
    private final class ConstantCell extends ListCell<TradeConstant> {
        @Override
        protected void updateItem(TradeConstant constant, boolean empty) {
            super.updateItem(constant, empty);
            setText(null);
            setGraphic(empty || constant == null ? null : line(constant));
        }

        private HBox line(TradeConstant constant) {
            Label words = new Label(constant.words());
            words.setMaxWidth(Double.MAX_VALUE);
            HBox.setHgrow(words, Priority.ALWAYS);
            String value = model.inShort(constant) + (model.isEdited(constant) ? " · edited" : "");
            HBox line = new HBox(12, words, Labels.whole(value, model.isEdited(constant) ? "strong" : "body"));
            line.prefWidthProperty().bind(list.widthProperty().subtract(40));
            return line;
        }
    }
}
