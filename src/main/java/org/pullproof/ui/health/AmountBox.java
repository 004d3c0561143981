package org.pullproof.ui.health;

import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pullproof.health.HealthFindings;
import org.pullproof.ui.parts.Labels;

/** What all readings amount to: candidates of the chosen cylinder, reasons, rules. Scrolls, so that the strip below stays in sight. */
final class AmountBox extends ScrollPane {
    private static final double SHORTEST = 160;

    private final HealthViewModel model;
    private final CandidatesList candidates = new CandidatesList();
    private final RulesList rules = new RulesList();
    private final VBox reasons = new VBox();

    AmountBox(HealthViewModel model) {
        this.model = model;
        reasons.getStyleClass().add("rules");
        HBox below = new HBox(24, reasons, rules);
        reasons.setPrefWidth(1);
        rules.setPrefWidth(1);
        HBox.setHgrow(reasons, Priority.ALWAYS);
        HBox.setHgrow(rules, Priority.ALWAYS);
        VBox all = new VBox(12, candidates, below);
        setContent(all);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setAccessibleText("What the readings amount to");
        getStyleClass().add("amount");
        setMinHeight(SHORTEST);
        setPrefHeight(SHORTEST);
    }

    void show() {
        HealthFindings findings = model.model().appraisal().health();
        candidates.show(findings.faults(), model.entry().cylinderProperty().get());
        reasons.getChildren().setAll(Labels.whole("Why", "section"));
        if (findings.reasons().isEmpty()) {
            reasons.getChildren()
                    .add(Labels.wrapped("Nothing has been read yet: Enter on a cylinder opens it.", "second"));
        }
        findings.reasons().forEach(reason -> reasons.getChildren().add(Labels.wrapped(reason)));
        findings.remarks().forEach(remark -> reasons.getChildren().add(Labels.wrapped(remark, "second")));
        rules.show(findings.rules());
    }
}
