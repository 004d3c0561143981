package org.pullproof.ui.health;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pullproof.health.HealthFindings;
import org.pullproof.health.HealthFindings.Rule;
import org.pullproof.ui.parts.Cautions;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.Mark;

/** Cautions of the test being typed, why the answer is what it is, and the rules of compression with their source. */
final class RulesList extends VBox {
    RulesList() {
        getStyleClass().add("rules");
    }

    /**
     * @param begun whether the test being typed has readings: then the reasons stand first, before it the cautions
     */
    void show(HealthFindings findings, List<String> cautions, boolean begun) {
        getChildren().clear();
        if (begun) {
            showReasons(findings);
            showCautions("Cautions for this test", cautions);
        } else {
            showCautions("Before you begin", cautions);
            showReasons(findings);
        }
    }

    private void showCautions(String title, List<String> sentences) {
        Cautions cautions = new Cautions();
        cautions.show(sentences);
        getChildren().addAll(Labels.whole(title, "section"), cautions);
    }

    private void showReasons(HealthFindings findings) {
        if (!findings.reasons().isEmpty()) {
            getChildren().add(Labels.whole("Why", "section"));
            findings.reasons().forEach(reason -> getChildren().add(Labels.wrapped(reason)));
        }
        findings.remarks().forEach(remark -> getChildren().add(Labels.wrapped(remark, "second")));
        if (!findings.rules().isEmpty()) {
            getChildren().add(Labels.whole("Rules of compression", "section"));
            findings.rules().stream().map(RulesList::rule).forEach(getChildren()::add);
        }
    }

    private static Node rule(Rule rule) {
        Mark mark = rule.met() ? Mark.TICK : Mark.CAUTION;
        VBox words = new VBox(
                Labels.wrapped((rule.met() ? "met: " : "not met: ") + rule.name(), "strong"),
                Labels.wrapped(rule.found()),
                Labels.wrapped(rule.source(), "caption"));
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox line = new HBox(6, mark.node(), words);
        line.getStyleClass().add("rule-line");
        return line;
    }

    /** What stands here before anything is measured. */
    void showEmpty(List<String> sentences, List<String> cautions) {
        getChildren().setAll(Labels.whole("Begin here", "section"));
        sentences.forEach(sentence -> getChildren().add(Labels.wrapped(sentence)));
        showCautions("Before you begin", cautions);
    }
}
