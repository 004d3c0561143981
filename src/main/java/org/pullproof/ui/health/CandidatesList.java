package org.pullproof.ui.health;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.pullproof.health.FaultFindings;
import org.pullproof.health.FaultFindings.CandidateChance;
import org.pullproof.health.FaultFindings.CylinderChances;
import org.pullproof.ui.parts.Labels;

/** What the chosen cylinder may have: each candidate with its chance, what fits and what speaks against it, and the next test. */
final class CandidatesList extends VBox {
    private static final int MOST = 4;
    private static final double BAR = 120;
    private static final double THICK = 4;

    CandidatesList() {
        getStyleClass().add("rules");
    }

    /** Nothing stands here for a cylinder that nothing is held against. */
    void show(FaultFindings faults, int cylinder) {
        getChildren().clear();
        faults.of(cylinder).filter(CandidatesList::suspected).ifPresent(this::showCandidates);
        boolean shown = !getChildren().isEmpty();
        if (shown) {
            showTests(faults, cylinder);
        }
        setVisible(shown);
        setManaged(shown);
    }

    private static boolean suspected(CylinderChances cylinder) {
        return cylinder.candidates().stream()
                .anyMatch(candidate ->
                        !candidate.fits().isEmpty() || !candidate.against().isEmpty());
    }

    private void showCandidates(CylinderChances cylinder) {
        getChildren()
                .addAll(
                        Labels.whole("Cylinder " + cylinder.number() + ": what it may be", "section"),
                        Labels.wrapped("chances from the readings and from judgement", "caption"));
        cylinder.candidates().stream()
                .limit(MOST)
                .map(CandidatesList::candidate)
                .forEach(getChildren()::add);
    }

    private static Node candidate(CandidateChance candidate) {
        String chance = Math.round(100 * candidate.probability()) + " of 100";
        VBox lines = new VBox(
                Labels.wrapped(candidate.words(), "strong"),
                new HBox(8, bar(candidate.probability()), Labels.whole(chance, "caption")));
        lines.setAccessibleText(candidate.words() + ", " + chance);
        candidate.fits().forEach(reading -> lines.getChildren().add(Labels.wrapped("fits: " + reading)));
        candidate.against().forEach(reading -> lines.getChildren().add(Labels.wrapped("against: " + reading)));
        lines.getStyleClass().add("rule-line");
        return lines;
    }

    /** A line as long as the chance, on a thin one that stands for 100. */
    private static Node bar(double probability) {
        Region share = new Region();
        share.getStyleClass().add("chance-share");
        share.setMinWidth(BAR * probability);
        share.setMaxWidth(BAR * probability);
        share.setPrefHeight(THICK);
        share.setMaxHeight(THICK);
        HBox whole = new HBox(share);
        whole.getStyleClass().add("chance-whole");
        whole.setMinWidth(BAR);
        whole.setMaxWidth(BAR);
        HBox.setHgrow(whole, Priority.NEVER);
        whole.setAlignment(Pos.CENTER_LEFT);
        return whole;
    }

    private void showTests(FaultFindings faults, int cylinder) {
        List<String> tests = faults.nextTests().stream()
                .filter(proposed -> proposed.test().cylinders().contains(cylinder))
                .map(proposed -> proposed.test().test().words() + ", "
                        + proposed.test().cost().minutes() + " min. " + proposed.why())
                .toList();
        getChildren().add(Labels.whole("Told apart by", "section"));
        (tests.isEmpty() ? List.of("No further test would change what to do.") : tests)
                .forEach(test -> getChildren().add(Labels.wrapped(test)));
    }
}
