package org.pullproof.ui.worth;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pullproof.advice.Stage;
import org.pullproof.ui.parts.CopyKey;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.SheetStyle;
import org.pullproof.ui.parts.Shown;
import org.pullproof.ui.shell.Sheet;

/** Is this engine worth more money? Options side by side, money spent apart, both edited in place. */
public final class WorthSheet implements Sheet {
    private final WorthViewModel model;
    private final VBox page = new VBox();
    private final Label money = Labels.wrapped("", "money-words");
    private final VBox remarks = new VBox();
    private final OptionsView options;
    private final OptionForm form;
    private final SpendingView spending;
    private final VBox empty = new VBox(
            Labels.whole("No option yet", "title"),
            Labels.wrapped(
                    "Type below what you could spend money on next: what it costs at least, likely and at most, and the power it"
                            + " should bring.",
                    "second"));

    public WorthSheet(WorthViewModel model) {
        this.model = model;
        this.form = new OptionForm(model);
        this.options = new OptionsView(model, row -> open(row.option()));
        this.spending = new SpendingView(model);
        page.getStyleClass().add("worth-sheet");
        SheetStyle.on(page);
        empty.getStyleClass().add("empty");
        HBox below = new HBox(28, form, spending);
        HBox.setHgrow(form, Priority.ALWAYS);
        below.getStyleClass().add("below-options");
        VBox.setVgrow(below, Priority.ALWAYS);
        page.getChildren().setAll(money, remarks, empty, options, below);
        model.model().appraisalProperty().addListener((of, before, after) -> show());
        show();
    }

    private void open(org.pullproof.worth.Option option) {
        form.edit(option);
        options.show(form.edited());
    }

    private void show() {
        money.setText(model.moneyWords());
        remarks.getChildren()
                .setAll(model.findings().remarks().stream()
                        .map(remark -> Labels.wrapped(remark, "caption"))
                        .toList());
        options.show(form.edited());
        spending.show();
        boolean none = model.findings().options().isEmpty();
        Shown.only(empty, none);
        Shown.only(options, !none);
    }

    @Override
    public Stage stage() {
        return Stage.WORTH_IT;
    }

    @Override
    public Node node() {
        return page;
    }

    @Override
    public void key(KeyEvent key) {
        CopyKey.copy(key, model::table);
    }
}
