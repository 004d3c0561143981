package org.pullproof.ui.worth;

import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pullproof.advice.Stage;
import org.pullproof.ui.parts.CopyKey;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.SentenceFlow;
import org.pullproof.ui.parts.SheetStyle;
import org.pullproof.ui.parts.Shown;
import org.pullproof.ui.shell.Sheet;
import org.pullproof.ui.shell.SheetPage;
import org.pullproof.worth.AnswerRows;
import org.pullproof.worth.decision.answer.OptionAnswer;
import org.pullproof.worth.decision.answer.Remark;
import org.pullproof.worth.decision.problem.CostLine;
import org.pullproof.worth.decision.problem.Node.Do;

/** Is this engine worth more money? Options side by side, what would flip the choice, tests by value, and what it all rests on. */
public final class WorthSheet implements Sheet {
    private final WorthViewModel model;
    private final ReadOnlyObjectWrapper<SheetPage> shownPage = new ReadOnlyObjectWrapper<>();
    private final VBox page = new VBox();
    private final HBox progress = new HBox(8, new ProgressBar(), Labels.whole("weighing the options anew", "caption"));
    private final VBox answer = new VBox();
    private final OptionsView options;
    private final SentenceFlow words = new SentenceFlow("money-words");
    private final VBox plan = new VBox();
    private final FlipsView flips = new FlipsView();
    private final TestsView tests = new TestsView();
    private final VBox remarks = new VBox();
    private final AskedView asked;
    private final JudgementsView judgements;
    private final OptionForm form;
    private final SpendingView spending;
    private final Label money = Labels.wrapped("", "second");

    public WorthSheet(WorthViewModel model) {
        this.model = model;
        this.form = new OptionForm(model);
        this.options = new OptionsView(model, this::open);
        this.spending = new SpendingView(model);
        this.asked = new AskedView(model);
        this.judgements = new JudgementsView(model);
        page.getStyleClass().add("worth-sheet");
        SheetStyle.on(page);
        HBox.setHgrow(flips, Priority.ALWAYS);
        answer.getStyleClass().add("worth-answer");
        answer.getChildren().setAll(words, options, plan, beside(flips, tests), remarks);
        page.getChildren().setAll(progress, answer, asked, beside(form, spending), judgements, money);
        model.model().appraisalProperty().addListener((of, before, after) -> show());
        model.weighedProperty().addListener((of, before, after) -> showAnswer());
        model.weighingProperty().addListener((of, before, after) -> showProgress());
        show();
        showAnswer();
        showProgress();
    }

    private static HBox beside(Node left, Node right) {
        HBox both = new HBox(28, left, right);
        HBox.setHgrow(left, Priority.ALWAYS);
        both.getStyleClass().add("below-options");
        return both;
    }

    /** An entered option is edited; of one of the program the numbers are shown. */
    private void open(OptionAnswer row) {
        model.entered(row).ifPresentOrElse(form::edit, () -> judgements.find(firstBill(row)));
    }

    private static String firstBill(OptionAnswer row) {
        if (row.option().tree() instanceof Do act) {
            return act.lines().stream()
                    .filter(line -> line.kind() == CostLine.Kind.ENGINE)
                    .map(CostLine::name)
                    .findFirst()
                    .orElse(row.name());
        }
        return row.name();
    }

    private void show() {
        asked.show();
        judgements.show();
        spending.show();
        money.setText(model.moneyWords());
        head();
    }

    private void head() {
        shownPage.set(new SheetPage.Headed(stage().question(), model.sentence()));
    }

    private void showProgress() {
        Shown.only(progress, model.weighingProperty().get());
        head();
    }

    private void showAnswer() {
        head();
        Shown.only(answer, model.weighed().isPresent());
        model.weighed().ifPresent(shown -> {
            AnswerRows rows = model.rows(shown);
            words.show(shown.rest());
            options.show(shown);
            plan.getChildren()
                    .setAll(rows.policy(shown.answer().best()).stream()
                            .map(step -> Labels.wrapped(shown.answer().best().name() + ": " + step, "caption"))
                            .toList());
            flips.show(rows);
            tests.show(rows);
            remarks.getChildren()
                    .setAll(Stream.concat(
                                    shown.answer().remarks().stream().map(Remark::words),
                                    shown.findings().remarks().stream())
                            .map(remark -> Labels.wrapped(remark, "caption"))
                            .toList());
        });
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
    public ObservableValue<SheetPage> page() {
        return shownPage.getReadOnlyProperty();
    }

    @Override
    public void key(KeyEvent key) {
        CopyKey.copy(key, model::table);
    }
}
