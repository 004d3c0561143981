package org.pullproof.ui.health;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pullproof.health.HealthFindings.Rule;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.Mark;

/** The rules of compression, each with what was found and its source. */
final class RulesList extends VBox {
    RulesList() {
        getStyleClass().add("rules");
    }

    void show(List<Rule> rules) {
        getChildren().clear();
        if (!rules.isEmpty()) {
            getChildren().add(Labels.whole("Rules of compression", "section"));
            rules.stream().map(RulesList::rule).forEach(getChildren()::add);
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
}
