package org.pullproof.ui.worth;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.pullproof.drawing.MoneyStrip;
import org.pullproof.ui.parts.DrawingView;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.worth.WorthViewModel.Weighed;
import org.pullproof.worth.AnswerRows;
import org.pullproof.worth.decision.answer.OptionAnswer;

/** The options side by side, best first, their money over one axis. Up and down move, Enter opens. */
final class OptionsView extends VBox {
    private static final PseudoClass GREYED = PseudoClass.getPseudoClass("greyed");
    private static final PseudoClass BEST = PseudoClass.getPseudoClass("chosen");
    private static final double ROW = 40;
    private static final double AXIS = 16;

    private final WorthViewModel model;
    private final Consumer<OptionAnswer> opened;

    /**
     * @param opened what happens when an option is opened
     */
    OptionsView(WorthViewModel model, Consumer<OptionAnswer> opened) {
        this.model = model;
        this.opened = opened;
        getStyleClass().add("ledger");
        setMinHeight(USE_PREF_SIZE);
        addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    }

    void show(Weighed shown) {
        AnswerRows rows = model.rows(shown);
        getChildren().setAll(head(shown));
        for (OptionAnswer row : shown.answer().options()) {
            getChildren().add(row(shown, rows, row, row.equals(shown.answer().best())));
        }
    }

    private Region head(Weighed shown) {
        String cap = shown.answer()
                .problem()
                .owner()
                .budget()
                .map(budget -> "; red: cap " + model.rows(shown).money(budget.cap()))
                .orElse("");
        VBox axis = new VBox(
                Labels.whole("money still to spend, 10 · 50 · 90 of 100" + cap, "caption"),
                strip(
                        new DrawingView((width, height) ->
                                model.strips(shown.answer(), width).axis(height)),
                        AXIS));
        axis.setAlignment(Pos.BOTTOM_CENTER);
        HBox head = new HBox(
                name(Labels.whole("Option", "caption")),
                axis,
                figure("option-power", Labels.whole("Power after", "caption")),
                figure("option-over", Labels.whole("over cap", "caption"), Labels.whole("of 100", "caption")),
                figure(
                        "option-net",
                        Labels.whole("better off by", "caption"),
                        Labels.whole("10 to 90 of 100", "caption")));
        head.setAlignment(Pos.BOTTOM_LEFT);
        head.getStyleClass().add("ledger-head");
        return head;
    }

    private Region row(Weighed shown, AnswerRows rows, OptionAnswer row, boolean best) {
        HBox line = new HBox(
                name(words(rows, row)),
                strip(
                        new DrawingView((width, height) -> {
                            MoneyStrip strips = model.strips(shown.answer(), width);
                            return strips.strip(WorthViewModel.bar(row), height);
                        }),
                        ROW),
                figure("option-power", Labels.whole(rows.power(row), "narrow")),
                figure("option-over", Labels.whole(rows.overBudget(row), row.allowed() ? "narrow" : "over")),
                figure(
                        "option-net",
                        Labels.whole(rows.net(row), "narrow"),
                        Labels.whole(rows.netEnds(row), "caption")));
        line.getStyleClass().addAll("ledger-row", "option-row");
        line.pseudoClassStateChanged(GREYED, rows.reason(row).isPresent());
        line.pseudoClassStateChanged(BEST, best);
        line.setUserData(row);
        line.setMinHeight(USE_PREF_SIZE);
        line.setFocusTraversable(true);
        line.setAccessibleRole(AccessibleRole.TABLE_ROW);
        line.setAccessibleText(row.name() + ", better off by " + rows.net(row) + ", " + rows.detail(row));
        line.setOnMousePressed(pressed -> line.requestFocus());
        line.setOnMouseClicked(clicked -> opened.accept(row));
        return line;
    }

    private static Node words(AnswerRows rows, OptionAnswer row) {
        VBox words = new VBox(Labels.wrapped(row.name(), "strong"));
        String detail = rows.detail(row);
        if (!detail.isEmpty()) {
            words.getChildren().add(Labels.wrapped(detail, "caption"));
        }
        return words;
    }

    private static Region name(Node node) {
        VBox box = new VBox(node);
        box.getStyleClass().add("option-name");
        HBox.setHgrow(box, Priority.ALWAYS);
        return box;
    }

    private static DrawingView strip(DrawingView view, double height) {
        view.getStyleClass().add("option-strip");
        view.setMinHeight(height);
        return view;
    }

    private static Region figure(String styleClass, Node... nodes) {
        VBox box = new VBox(nodes);
        box.setAlignment(Pos.TOP_RIGHT);
        box.getStyleClass().add(styleClass);
        return box;
    }

    private void key(KeyEvent key) {
        List<Node> rows =
                getChildren().stream().filter(Node::isFocusTraversable).toList();
        Optional<Node> focused = rows.stream().filter(Node::isFocused).findFirst();
        if (focused.isEmpty()) {
            return;
        }
        int at = rows.indexOf(focused.get());
        switch (key.getCode()) {
            case DOWN -> rows.get(Math.min(rows.size() - 1, at + 1)).requestFocus();
            case UP -> rows.get(Math.max(0, at - 1)).requestFocus();
            case ENTER -> opened.accept((OptionAnswer) rows.get(at).getUserData());
            default -> {
                return;
            }
        }
        key.consume();
    }
}
