package org.pullproof.ui.health;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pullproof.health.HealthFindings;
import org.pullproof.health.HealthFindings.Rule;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.Mark;

/** Why the answer is what it is, and the rules of compression with their source. */
final class RulesList extends VBox {
    RulesList() {
        getStyleClass().add("rules");
    }

    void show(HealthFindings findings) {
        getChildren().clear();
        if (!findings.reasons().isEmpty()) {
            getChildren().add(Labels.whole("Why", "section"));
            findings.reasons().forEach(reason -> getChildren().add(Labels.wrapped(reason)));
        }
        findings.remarks().forEach(remark -> getChildren().add(Labels.wrapped(remark, "second")));
        if (!findings.rules().isEmpty()) {
            getChildren().add(Labels.section("Rules of compression", ""));
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
    void showEmpty(List<String> sentences) {
        getChildren().setAll(Labels.whole("Begin here", "section"));
        sentences.forEach(sentence -> getChildren().add(Labels.wrapped(sentence)));
    }
}
