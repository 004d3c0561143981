package org.pullproof.ui.worth;

import java.util.Optional;
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
import org.pullproof.units.Figures;
import org.pullproof.units.Money;
import org.pullproof.worth.Spending;
import org.pullproof.worth.WorthFindings.Paid;

/** Money spent, set apart, and what the judged changes cost for one horsepower. */
final class SpendingView extends VBox {
    private final WorthViewModel model;
    private final VBox list = new VBox();
    private final VBox done = new VBox();
    private final TextField what = new TextField();
    private final CheckedField<Money> amount;
    private final Label refusal = Labels.wrapped("", "refusal");
    private final Button keep = Actions.plain("Spent", "Enter");
    private Optional<Spending> edited = Optional.empty();

    SpendingView(WorthViewModel model) {
        this.model = model;
        this.amount = new CheckedField<>("Amount spent", model::money);
        getStyleClass().add("spending");
        what.setId("spent-what");
        what.setPromptText("dyno hour");
        what.setAccessibleText("What the money went for");
        what.setOnAction(entered -> keep());
        amount.field().setId("spent-amount");
        amount.field().setPromptText("160");
        amount.field().setPrefColumnCount(6);
        amount.field().setOnAction(entered -> keep());
        keep.setOnAction(pressed -> keep());
        HBox.setHgrow(what, Priority.ALWAYS);
        getChildren()
                .setAll(
                        Labels.section("Spent", "does not count any more"),
                        list,
                        new HBox(6, what, amount, keep),
                        done);
    }

    private void keep() {
        getChildren().remove(refusal);
        if (!amount.take()) {
            return;
        }
        try {
            model.spend(what.getText(), amount.value(), edited);
            edited = Optional.empty();
            keep.setText("Spent");
            what.clear();
            amount.show("");
            what.requestFocus();
        } catch (IllegalArgumentException refused) {
            refusal.setText(String.valueOf(refused.getMessage()));
            getChildren().add(refusal);
        }
    }

    void show() {
        list.getChildren().setAll(model.spent().stream().map(this::line).toList());
        if (model.spent().isEmpty()) {
            list.getChildren().setAll(Labels.whole("Nothing entered yet.", "second"));
        }
        done.getChildren().clear();
        if (!model.findings().done().isEmpty()) {
            done.getChildren().add(Labels.section("Changes that were paid for", "for one hp at the wheels"));
            model.findings().done().forEach(paid -> done.getChildren().add(line(paid)));
        }
    }

    private Node line(Spending spending) {
        Button edit = link("Edit", () -> edit(spending));
        edit.setAccessibleText("Edit " + spending.what());
        Button remove = link("Remove", () -> model.remove(spending));
        remove.setAccessibleText("Remove " + spending.what());
        Label words = Labels.wrapped(spending.what());
        HBox.setHgrow(words, Priority.ALWAYS);
        words.setMaxWidth(Double.MAX_VALUE);
        HBox line = new HBox(6, words, Labels.whole(Figures.money(spending.amount()), "narrow"), edit, remove);
        line.getStyleClass().add("row");
        return line;
    }

    private static Button link(String words, Runnable act) {
        Button button = Actions.plain(words, "");
        button.getStyleClass().add("link");
        button.setOnAction(pressed -> act.run());
        return button;
    }

    private void edit(Spending spending) {
        edited = Optional.of(spending);
        what.setText(spending.what());
        amount.show(spending.amount().toString());
        keep.setText("Keep");
        what.requestFocus();
    }

    private static Node line(Paid paid) {
        Label name = Labels.wrapped(paid.change());
        HBox.setHgrow(name, Priority.ALWAYS);
        name.setMaxWidth(Double.MAX_VALUE);
        HBox line = new HBox(
                8,
                name,
                Labels.whole(Figures.money(paid.cost()), "narrow"),
                Labels.wrapped(paid.costPerHp().words(), "caption"));
        line.getStyleClass().add("row");
        return line;
    }
}
