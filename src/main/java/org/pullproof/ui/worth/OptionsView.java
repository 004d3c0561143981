package org.pullproof.ui.worth;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.pullproof.ui.parts.DrawingView;
import org.pullproof.ui.parts.Labels;
import org.pullproof.worth.WorthFindings.Row;

/** The options with their costs over one axis. Up and down move, Enter edits. */
final class OptionsView extends VBox {
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");

    private final WorthViewModel model;
    private final Consumer<Row> edit;

    /**
     * @param edit what happens when an option is opened
     */
    OptionsView(WorthViewModel model, Consumer<Row> edit) {
        this.model = model;
        this.edit = edit;
        getStyleClass().add("ledger");
        setMinHeight(USE_PREF_SIZE);
        addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    }

    /** Shows the options; the one being edited is marked. */
    void show(String edited) {
        getChildren().setAll(head());
        model.findings().options().forEach(row -> getChildren().add(row(row, edited)));
    }

    private Region head() {
        String cap = model.findings().budgetLeft().isPresent() ? "; red: budget left" : "";
        VBox axis = new VBox(
                Labels.whole("money, low · likely · high" + cap, "caption"),
                strip(new DrawingView((width, height) -> model.strips(width).axis(height)), 16));
        axis.setAlignment(Pos.BOTTOM_CENTER);
        HBox head = new HBox(
                name(Labels.whole("Option", "caption")),
                axis,
                figure(Labels.whole("Gain at the wheels", "caption"), "option-gain"),
                figure(Labels.whole("One horsepower costs", "caption"), "option-price"));
        head.setAlignment(Pos.BOTTOM_LEFT);
        head.getStyleClass().add("ledger-head");
        return head;
    }

    private Region row(Row row, String edited) {
        HBox line = new HBox(
                name(words(row)),
                strip(new DrawingView((width, height) -> model.strips(width).strip(row.option(), height)), 40),
                figure(gain(row), "option-gain"),
                figure(
                        Labels.wrapped(row.costPerHp().words(), row.costPerHp().established() ? "narrow" : "caption"),
                        "option-price"));
        line.getStyleClass().addAll("ledger-row", "option-row");
        line.pseudoClassStateChanged(CHOSEN, row.option().name().equals(edited));
        line.setUserData(row);
        line.setMinHeight(USE_PREF_SIZE);
        line.setFocusTraversable(true);
        line.setAccessibleRole(AccessibleRole.TABLE_ROW);
        line.setAccessibleText(row.option().name() + ", " + row.costPerHp().words()
                + (row.overBudget() ? ", over budget" : "") + (row.option().judgement() ? ", judgement" : ""));
        line.setOnMousePressed(pressed -> line.requestFocus());
        line.setOnMouseClicked(clicked -> edit.accept(row));
        return line;
    }

    private Node words(Row row) {
        FlowPane second = new FlowPane(6, 2);
        if (row.option().judgement()) {
            second.getChildren().add(Labels.whole("judgement", "tag", "assumed"));
        }
        if (row.overBudget()) {
            second.getChildren().add(Labels.whole("over budget", "tag", "stop"));
        }
        String detail = model.detail(row);
        if (!detail.isEmpty()) {
            second.getChildren().add(Labels.whole(detail, "caption"));
        }
        return new VBox(2, Labels.wrapped(row.option().name(), "strong"), second);
    }

    private Node gain(Row row) {
        VBox gain = new VBox(Labels.whole(model.gain(row), "narrow"));
        String ends = model.gainEnds(row);
        if (!ends.isEmpty()) {
            gain.getChildren().add(Labels.whole(ends, "caption"));
        }
        gain.setAlignment(Pos.TOP_RIGHT);
        return gain;
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

    private static Region figure(Node node, String styleClass) {
        VBox box = new VBox(node);
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
            case ENTER -> edit.accept((Row) rows.get(at).getUserData());
            default -> {
                return;
            }
        }
        key.consume();
    }
}
