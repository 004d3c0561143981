package org.pullproof.ui.worth;

import java.util.List;
import java.util.Locale;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.CheckedField;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.Shown;
import org.pullproof.worth.trade.JudgedNumber;

/** The numbers behind the answer that nobody measured: found by words, each edited in place and put back. */
final class JudgementsView extends VBox {
    private static final int MOST = 12;

    private final WorthViewModel model;
    private final TextField search = new TextField();
    private final VBox list = new VBox();
    private final Label more = Labels.wrapped("", "caption");
    private final Button resetAll = Actions.plain("Put all usual numbers back", "");

    JudgementsView(WorthViewModel model) {
        this.model = model;
        getStyleClass().add("judgements");
        search.setId("judgement-search");
        search.setPromptText("lash, head, resale, overrun, rings …");
        search.setAccessibleText("Find a number by its words");
        search.textProperty().addListener((of, before, after) -> show());
        resetAll.setOnAction(pressed -> model.resetAll());
        getChildren()
                .setAll(
                        Labels.section("Numbers behind it", "judgement, unless you put your own in their place"),
                        search,
                        list,
                        more,
                        resetAll);
    }

    /** Shows the numbers about something. */
    void find(String words) {
        search.setText(words);
        search.requestFocus();
    }

    void show() {
        List<JudgedNumber> all = model.judgements();
        String wanted = search.getText().strip().toLowerCase(Locale.ROOT);
        List<JudgedNumber> found = all.stream()
                .filter(one -> wanted.isEmpty()
                        ? one.own()
                        : (one.words() + " " + one.key())
                                .toLowerCase(Locale.ROOT)
                                .contains(wanted))
                .toList();
        list.getChildren().setAll(found.stream().limit(MOST).map(this::row).toList());
        more.setText(words(wanted, all.size(), found.size()));
        Shown.only(resetAll, all.stream().anyMatch(JudgedNumber::own));
    }

    private static String words(String wanted, int all, int found) {
        if (wanted.isEmpty()) {
            return found == 0
                    ? "All " + all + " numbers are the usual ones. Type a word above to see and change them."
                    : found + " of " + all + " are your own. Type a word above to see the others.";
        }
        return found > MOST ? MOST + " of " + found + " are shown; another word narrows it." : found + " found.";
    }

    private Node row(JudgedNumber number) {
        CheckedField<Double> field = new CheckedField<>(number.words(), JudgementsView::read);
        field.field().setId("judgement-" + number.key().replace('.', '-'));
        field.field().setPrefColumnCount(6);
        field.show(number.shown());
        field.onTaken(value -> model.judge(number, value, field::refuse));
        field.onForgotten(() -> model.reset(number));
        Label words = Labels.wrapped(number.words());
        HBox.setHgrow(words, Priority.ALWAYS);
        words.setMaxWidth(Double.MAX_VALUE);
        Button reset = Actions.plain("Usual", "");
        reset.getStyleClass().add("link");
        reset.setAccessibleText("Put the usual number back: " + number.words());
        reset.setOnAction(pressed -> model.reset(number));
        reset.setVisible(number.own());
        HBox line = new HBox(8, words, field, unit(number), reset);
        line.setAlignment(Pos.CENTER_LEFT);
        line.getStyleClass().add("row");
        return line;
    }

    private static Label unit(JudgedNumber number) {
        Label unit = Labels.whole(number.unit() + (number.own() ? ", yours" : ""), "caption");
        unit.setPrefWidth(92);
        return unit;
    }

    private static Double read(String typed) {
        try {
            return Double.valueOf(typed.replace(',', '.'));
        } catch (NumberFormatException wrong) {
            throw new IllegalArgumentException("\"" + typed + "\" is not a number: write 0.35.", wrong);
        }
    }
}
