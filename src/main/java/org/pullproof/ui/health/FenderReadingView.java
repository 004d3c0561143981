package org.pullproof.ui.health;

import java.util.List;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.SentenceFlow;

/** One number, big: cylinder, field, sentence, keys, and the cylinders at their places. */
final class FenderReadingView extends VBox {
    private static final PseudoClass MARKED = PseudoClass.getPseudoClass("marked");
    private static final PseudoClass KEPT = PseudoClass.getPseudoClass("kept");
    private static final PseudoClass LONG = PseudoClass.getPseudoClass("long");
    private static final PseudoClass WORD = PseudoClass.getPseudoClass("word");
    private static final int MOST_LARGE_KEYS = 7;
    private static final int MOST_BIG_DIGITS = 4;
    private static final int MOST_DIGITS = 7;

    private final FenderViewModel model;
    private final Label title = Labels.whole("", "fender-title");
    private final Label conditions = Labels.wrapped("", "fender-conditions");
    private final Label cylinder = Labels.whole("", "fender-number");
    private final Label label = Labels.whole("", "fender-label");
    private final Label typed = Labels.whole("", "fender-typed");
    private final Region caret = new Region();
    private final Label unit = Labels.whole("", "fender-unit");
    private final HBox field = new HBox(typed, caret, space(), unit);
    private final SentenceFlow said = new SentenceFlow("fender-said");
    private final VBox saidBox = new VBox(said);
    private final VBox keys = new VBox();
    private final FenderPlan plan = new FenderPlan();

    FenderReadingView(FenderViewModel model) {
        this.model = model;
        getStyleClass().add("fender-reading");
        Region grows = new Region();
        VBox.setVgrow(grows, Priority.ALWAYS);
        getChildren().setAll(head(), new HBox(36, left(), right()), grows, plan);
        model.screenProperty().addListener((of, before, after) -> show(after));
        show(model.screen());
    }

    private static Region space() {
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        return space;
    }

    private Node head() {
        Button leave = Actions.plain("Leave fender mode", "Esc");
        leave.setFocusTraversable(false);
        leave.setOnAction(pressed -> model.leave());
        HBox.setHgrow(conditions, Priority.ALWAYS);
        conditions.setMaxWidth(Double.MAX_VALUE);
        HBox head = new HBox(16, title, conditions, leave);
        head.setAlignment(Pos.CENTER_LEFT);
        head.getStyleClass().add("fender-head");
        return head;
    }

    private Node left() {
        caret.getStyleClass().add("fender-caret");
        field.getStyleClass().add("fender-field");
        VBox number = new VBox(Labels.whole("Cylinder", "fender-label"), cylinder);
        number.getStyleClass().add("fender-cylinder");
        VBox entry = new VBox(4, label, field);
        HBox.setHgrow(entry, Priority.ALWAYS);
        saidBox.getStyleClass().add("fender-said-box");
        VBox left = new VBox(new HBox(number, entry), saidBox);
        HBox.setHgrow(left, Priority.ALWAYS);
        return left;
    }

    private Node right() {
        keys.getStyleClass().add("fender-keys");
        return keys;
    }

    private void show(FenderScreen screen) {
        title.setText(screen.title());
        conditions.setText(screen.conditions());
        cylinder.setText(screen.cylinder());
        label.setText(screen.label());
        typed.setText(screen.typed().replace('-', ' '));
        unit.setText(screen.unit());
        field.pseudoClassStateChanged(KEPT, screen.kept());
        int letters = screen.typed().length();
        field.pseudoClassStateChanged(LONG, letters > MOST_BIG_DIGITS && letters <= MOST_DIGITS);
        field.pseudoClassStateChanged(WORD, letters > MOST_DIGITS);
        saidBox.setVisible(screen.said().isPresent());
        saidBox.pseudoClassStateChanged(MARKED, screen.marked());
        screen.said().ifPresent(said::show);
        show(screen.keys());
        plan.show(model.engine(), screen.rows(), screen.caution());
    }

    private void show(List<FenderScreen.Key> does) {
        keys.getChildren().setAll(Labels.whole("Keys", "fender-label"));
        String size = does.size() > MOST_LARGE_KEYS ? "fender-key-row-dense" : "fender-key-row";
        does.forEach(key -> keys.getChildren().add(row(key, size)));
    }

    private static Node row(FenderScreen.Key key, String size) {
        Label name = Labels.whole(key.key(), "fender-key");
        HBox row = new HBox(name, Labels.whole(key.does(), "fender-does"));
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add(size);
        return row;
    }
}
