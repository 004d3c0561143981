package org.pullproof.ui.search;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.SheetStyle;

/** Search over everything: a veil over the window, a field, and what answers it. All by keys; the keyboard stays in the field. */
public final class SearchPage extends StackPane {
    private static final double WIDTH = 740;
    private static final double HEIGHT = 528;

    private final List<Found> all;
    private final Runnable leave;
    private final TextField field = new TextField();
    private final ListView<SearchLine> list = new ListView<>();
    private final Label count = Labels.whole("", "caption");

    /**
     * @param all everything that can be found, asked for once
     * @param leave closes the page
     */
    public SearchPage(Supplier<List<Found>> all, Runnable leave) {
        this.all = all.get();
        this.leave = leave;
        getStyleClass().add("search-veil");
        SheetStyle.onPage(this);
        field.setId("search-field");
        field.setPromptText("what do you look for, or want to do?");
        field.setAccessibleText("Search the session and everything that can be done");
        field.textProperty().addListener((of, before, text) -> find());
        list.setId("found");
        list.setAccessibleText("What was found");
        list.setFocusTraversable(false);
        list.setCellFactory(of -> new SearchCell(field::getText));
        list.setOnMouseClicked(this::clicked);
        VBox.setVgrow(list, Priority.ALWAYS);
        VBox box = new VBox(head(), list, foot());
        box.getStyleClass().add("search-box");
        box.setMaxSize(WIDTH, HEIGHT);
        StackPane.setAlignment(box, Pos.TOP_CENTER);
        getChildren().setAll(box);
        addEventFilter(KeyEvent.KEY_PRESSED, this::press);
        addEventFilter(KeyEvent.KEY_TYPED, this::typed);
        setOnMouseClicked(this::clickedBeside);
        find();
    }

    private HBox head() {
        HBox.setHgrow(field, Priority.ALWAYS);
        HBox head = new HBox(12, field, count);
        head.setAlignment(Pos.CENTER_LEFT);
        head.getStyleClass().add("search-head");
        return head;
    }

    private static HBox foot() {
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        HBox foot = new HBox(
                22,
                Labels.whole("↑ ↓ choose", "caption"),
                Labels.whole("Enter go there, or do it", "caption"),
                Labels.whole("Esc close", "caption"),
                space,
                Labels.whole("what can't be done now says why", "caption"));
        foot.getStyleClass().add("search-foot");
        return foot;
    }

    private void find() {
        List<Found> found = Ranking.of(all, field.getText());
        list.getItems().setAll(SearchLine.of(found));
        list.getSelectionModel().select(SearchLine.firstFound(list.getItems()));
        list.scrollTo(0);
        count.setText(found.isEmpty() ? "nothing found" : found.size() + " found");
        speak();
    }

    private void press(KeyEvent key) {
        switch (key.getCode()) {
            case ESCAPE -> leave.run();
            case DOWN, TAB -> move(key.isShiftDown() ? -1 : 1);
            case UP -> move(-1);
            case ENTER -> choose();
            default -> {
                return;
            }
        }
        key.consume();
    }

    /** The stroke that opened the page is not the first letter of a question. */
    private void typed(KeyEvent key) {
        if (key.getCharacter().equals("/") && field.getText().isEmpty()) {
            key.consume();
        }
    }

    private void move(int by) {
        int next = SearchLine.next(list.getItems(), list.getSelectionModel().getSelectedIndex(), by);
        list.getSelectionModel().select(next);
        list.scrollTo(Math.max(0, next - 5));
        speak();
    }

    /** The keyboard stays in the field, so the field says what is chosen. */
    private void speak() {
        field.setAccessibleHelp(
                selected().map(found -> found.title() + ", " + found.detail()).orElse("nothing found"));
    }

    private Optional<Found> selected() {
        return Optional.ofNullable(list.getSelectionModel().getSelectedItem()).flatMap(SearchLine::found);
    }

    private void choose() {
        selected().ifPresent(found -> {
            leave.run();
            found.chosen().run();
        });
    }

    private void clicked(MouseEvent click) {
        if (click.getButton() == MouseButton.PRIMARY) {
            choose();
        }
    }

    private void clickedBeside(MouseEvent click) {
        if (click.getTarget() == this) {
            leave.run();
        }
    }

    /** The field is where the page begins. */
    @Override
    public void requestFocus() {
        field.requestFocus();
    }
}
