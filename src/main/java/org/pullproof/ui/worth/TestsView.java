package org.pullproof.ui.worth;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pullproof.ui.parts.Labels;
import org.pullproof.worth.AnswerRows;
import org.pullproof.worth.decision.answer.TestAnswer;
import org.pullproof.worth.decision.answer.TestAnswer.Verdict;

/** Tests by what they are worth before deciding; faint where no result changes the choice. */
final class TestsView extends VBox {
    TestsView() {
        getStyleClass().add("money-tests");
    }

    void show(AnswerRows rows) {
        getChildren().setAll(Labels.section("Tests that could still change it", ""));
        if (rows.answer().tests().isEmpty()) {
            getChildren().add(Labels.wrapped("No test that you may do now is left.", "second"));
            return;
        }
        getChildren().add(line("caption", "Test", "takes", "costs", "is worth"));
        rows.answer().tests().forEach(test -> getChildren().add(test(rows, test)));
    }

    private static Node test(AnswerRows rows, TestAnswer test) {
        String style = test.verdict() == Verdict.WORTH_DOING_FIRST ? "strong" : "second";
        VBox both = new VBox(
                line(
                        style,
                        test.test().name(),
                        rows.minutes(test),
                        rows.money(test.cost()),
                        rows.money(test.value().value())),
                Labels.wrapped(rows.verdict(test), "caption"));
        both.getStyleClass().add("test-row");
        both.setAccessibleText(String.join("; ", rows.results(test)));
        return both;
    }

    private static Node line(String style, String name, String takes, String costs, String worth) {
        Label words = Labels.wrapped(name, style);
        HBox.setHgrow(words, Priority.ALWAYS);
        words.setMaxWidth(Double.MAX_VALUE);
        return new HBox(6, words, figure(takes, style), figure(costs, style), figure(worth, style));
    }

    private static Label figure(String words, String style) {
        Label label = Labels.whole(words, style);
        label.getStyleClass().add("test-figure");
        return label;
    }
}
