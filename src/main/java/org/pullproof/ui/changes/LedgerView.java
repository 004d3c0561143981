package org.pullproof.ui.changes;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.pullproof.drawing.CallMark;
import org.pullproof.ui.parts.DrawingView;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.Sentences;

/** The ledger: change, interval, call with its shape and sentence, cost. Up and down move from row to row; Tab leaves it. */
final class LedgerView extends VBox {
    private final ChangesViewModel model;
    private final List<Region> rows = new ArrayList<>();
    private final List<CallWords> calls = new ArrayList<>();
    private int chosen;
    private Runnable onChosen = () -> {};

    LedgerView(ChangesViewModel model) {
        this.model = model;
        getStyleClass().add("ledger");
        setMinHeight(USE_PREF_SIZE);
        addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    }

    /** What happens when a line is chosen. */
    void onChosen(Runnable act) {
        onChosen = act;
    }

    void show() {
        boolean held = rows.stream().anyMatch(Node::isFocused);
        rows.clear();
        calls.clear();
        model.rows().forEach(row -> rows.add(row(row)));
        model.baselineToNow().ifPresent(row -> {
            Region last = row(row);
            last.getStyleClass().add("baseline");
            rows.add(last);
        });
        getChildren().setAll(head());
        getChildren().addAll(rows);
        choose(chosen);
        if (held) {
            rows.get(chosen).requestFocus();
        }
    }

    /** One row holds the place in the order of Tab, so that ten changes are not ten stops. */
    private void choose(int row) {
        chosen = Math.max(0, Math.min(rows.size() - 1, row));
        rows.forEach(each -> each.setFocusTraversable(rows.indexOf(each) == chosen));
        for (int i = 0; i < calls.size(); i++) {
            calls.get(i).showWhole(i == chosen);
        }
        model.choose(chosen);
        onChosen.run();
    }

    private Region head() {
        VBox axis = new VBox(
                Labels.whole("difference of band power, %, with 90 % interval", "caption"),
                strip(new DrawingView((width, height) -> model.strips(width).axis(height)), 16));
        axis.setAlignment(Pos.BOTTOM_CENTER);
        HBox head = new HBox(
                left(Labels.whole("Change", "caption")),
                axis,
                right(Labels.whole("Call", "caption")),
                cost(Labels.whole("Cost", "caption")));
        head.setAlignment(Pos.BOTTOM_LEFT);
        head.getStyleClass().add("ledger-head");
        return head;
    }

    private Region row(LedgerRow row) {
        VBox words = new VBox(Labels.wrapped(row.what(), "strong"), Labels.wrapped(row.steps(), "second"));
        if (!row.beforeAfter().isEmpty()) {
            words.getChildren().add(Labels.whole(row.beforeAfter(), "caption"));
        }
        HBox line = new HBox(left(words), interval(row), right(call(row)), cost(Labels.whole(row.cost(), "narrow")));
        line.getStyleClass().add("ledger-row");
        line.setMinHeight(USE_PREF_SIZE);
        line.setAccessibleRole(AccessibleRole.TABLE_ROW);
        line.setAccessibleText(
                row.what() + ", " + row.steps() + ": " + row.call().words() + ". " + row.sentence());
        line.setOnMousePressed(pressed -> {
            choose(rows.indexOf(line));
            line.requestFocus();
        });
        return line;
    }

    private Node interval(LedgerRow row) {
        DrawingView view = row.judged()
                .map(judged ->
                        new DrawingView((width, height) -> model.strips(width).strip(judged, height)))
                .orElseGet(DrawingView::new);
        return strip(view, 46);
    }

    private static DrawingView strip(DrawingView view, double height) {
        view.getStyleClass().add("ledger-strip");
        view.setMinHeight(height);
        return view;
    }

    private Node call(LedgerRow row) {
        DrawingView mark = new DrawingView((width, height) -> CallMark.of(row.call()));
        mark.setMinSize(16, 16);
        mark.setMaxSize(16, 16);
        HBox word = new HBox(7, mark, Labels.whole(row.call().words(), "strong"));
        word.setAlignment(Pos.CENTER_LEFT);
        CallWords words = new CallWords(row.sentence());
        calls.add(words);
        return new VBox(word, words.label());
    }

    /** The call in words: all of them in the chosen row, else as much as tells it. */
    private record CallWords(String sentence, Label label) {
        private static final int SHORT = 2;

        CallWords(String sentence) {
            this(sentence, Labels.wrapped(sentence, "caption", "second"));
        }

        void showWhole(boolean whole) {
            label.setText(whole ? sentence : Sentences.first(sentence, SHORT));
        }
    }

    private static Region left(Node node) {
        VBox box = new VBox(node);
        box.getStyleClass().add("ledger-left");
        return box;
    }

    private static Region right(Node node) {
        VBox box = new VBox(node);
        box.setPadding(new Insets(0, 10, 0, 14));
        HBox.setHgrow(box, Priority.ALWAYS);
        box.getStyleClass().add("ledger-right");
        return box;
    }

    private static Region cost(Label label) {
        VBox box = new VBox(label);
        box.setAlignment(Pos.TOP_RIGHT);
        box.getStyleClass().add("ledger-cost");
        return box;
    }

    private void key(KeyEvent key) {
        int step = key.getCode() == KeyCode.DOWN ? 1 : key.getCode() == KeyCode.UP ? -1 : 0;
        if (step == 0 || rows.isEmpty()) {
            return;
        }
        choose(chosen + step);
        rows.get(chosen).requestFocus();
        key.consume();
    }
}
