package org.pullproof.ui.health;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.pullproof.health.FaultFindings;
import org.pullproof.health.FaultFindings.CandidateChance;
import org.pullproof.health.FaultFindings.CylinderChances;
import org.pullproof.ui.parts.Labels;

/** What the chosen cylinder may have: a row for each candidate with its chance, what fits, what speaks against it; then the next test. */
final class CandidatesList extends VBox {
    private static final int MOST = 4;
    private static final double BAR = 120;
    private static final double THICK = 4;
    private static final double FIRST = 160;

    CandidatesList() {
        getStyleClass().add("candidates");
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
                        Labels.section(
                                "Cylinder " + cylinder.number() + ": what it may be",
                                "chances from the readings and from judgement you can edit, Ctrl J"),
                        row("candidate-head", captions("Candidate"), captions("Fits"), captions("Speaks against")));
        cylinder.candidates().stream()
                .limit(MOST)
                .map(CandidatesList::candidate)
                .forEach(getChildren()::add);
    }

    private static Label captions(String words) {
        return Labels.whole(words, "caption");
    }

    private static HBox row(String styleClass, Region first, Region second, Region third) {
        first.setMinWidth(FIRST);
        first.setPrefWidth(FIRST);
        first.setMaxWidth(FIRST);
        for (Region column : List.of(second, third)) {
            column.setPrefWidth(1);
            column.setMaxWidth(Double.MAX_VALUE);
            HBox.setHgrow(column, Priority.ALWAYS);
        }
        HBox row = new HBox(16, first, second, third);
        row.getStyleClass().add(styleClass);
        return row;
    }

    private static Node candidate(CandidateChance candidate) {
        String chance = Math.round(100 * candidate.probability()) + " of 100";
        VBox name = new VBox(
                Labels.wrapped(candidate.words(), "strong"), Labels.whole(chance), bar(candidate.probability()));
        HBox row = row(
                "candidate-row",
                name,
                sentences(candidate.fits(), "No reading yet."),
                sentences(candidate.against(), "Nothing so far."));
        row.setAccessibleText(candidate.words() + ", " + chance);
        return row;
    }

    private static VBox sentences(List<String> readings, String none) {
        VBox lines = new VBox();
        if (readings.isEmpty()) {
            lines.getChildren().add(Labels.wrapped(none, "second"));
        }
        readings.forEach(reading -> lines.getChildren().add(Labels.wrapped(reading)));
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
        VBox told = sentences(tests, "No further test would change what to do.");
        HBox.setHgrow(told, Priority.ALWAYS);
        HBox row = new HBox(16, captions("Told apart by"), told);
        row.getStyleClass().add("candidate-row");
        ((Region) row.getChildren().get(0)).setMinWidth(FIRST);
        getChildren().add(row);
    }
}
