package org.pullproof.ui.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.pullproof.advice.Appraisal;
import org.pullproof.advice.NextStep;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.Mark;
import org.pullproof.ui.parts.Sentences;
import org.pullproof.units.Figures;

/** The one thing to do now: why, what it settles, what it takes, its cautions, and the evidence so far. */
final class NextStepPane extends StackPane {
    private static final int MOST_EVIDENCE = 2;

    private final VBox body = new VBox();
    private final Runnable go;

    NextStepPane(SessionViewModel model, Runnable go) {
        this.go = go;
        getStyleClass().add("next");
        body.getStyleClass().add("next-body");
        ScrollPane scroll = new ScrollPane(body);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        getChildren().setAll(scroll);
        model.appraisalProperty().addListener((of, before, after) -> show(after));
        show(model.appraisal());
    }

    private void show(Appraisal appraisal) {
        NextStep next = appraisal.next();
        Label head = styled("Next step", "question");
        Button button = Actions.go("Open " + next.stage().words(), "Ctrl Enter");
        button.setOnAction(pressed -> go.run());
        VBox.setMargin(button, new javafx.geometry.Insets(12, 0, 0, 0));
        Node cost = cost(next);
        VBox.setMargin(cost, new javafx.geometry.Insets(13, 0, 0, 0));
        body.getChildren()
                .setAll(
                        head,
                        styled(next.action(), "title"),
                        styled("Why", "caption"),
                        styled(next.why(), "body"),
                        styled("What it settles", "caption"),
                        styled(next.settles(), "body"),
                        cost,
                        button);
        if (!next.cautions().isEmpty()) {
            body.getChildren().add(cautions(next.cautions()));
        }
        body.getChildren().add(evidence(appraisal));
    }

    private static Node cost(NextStep next) {
        HBox box = new HBox(
                part("Time", time(next.minutes())),
                part("Money", Figures.money(next.cost())),
                part("Needs", next.needs().words()));
        box.getChildren().get(2).getStyleClass().add("last");
        box.getStyleClass().add("cost");
        return box;
    }

    /** "20 min", "1.5 h" from two hours on. */
    static String time(int minutes) {
        return minutes < 120
                ? minutes + "" + Figures.NO_BREAK_SPACE + "min"
                : String.format(Locale.ROOT, "%.1f", minutes / 60.0) + Figures.NO_BREAK_SPACE + "h";
    }

    private static Node part(String name, String words) {
        Label value = styled(words, "cost-words");
        VBox part = new VBox(styled(name, "caption"), value);
        part.getStyleClass().add("cost-part");
        HBox.setHgrow(part, Priority.ALWAYS);
        return part;
    }

    private static Node cautions(List<String> sentences) {
        VBox box = new VBox(styled("Before you begin", "section"));
        box.getStyleClass().add("cautions");
        sentences.forEach(sentence -> box.getChildren().add(caution(sentence)));
        VBox.setMargin(box, new javafx.geometry.Insets(14, 0, 0, 0));
        return box;
    }

    private static Node caution(String sentence) {
        HBox line = new HBox(Mark.CAUTION.node(), styled(sentence, "caution"));
        HBox.setHgrow(line.getChildren().get(1), Priority.ALWAYS);
        return line;
    }

    private static Node evidence(Appraisal appraisal) {
        VBox box = new VBox(styled("Evidence so far", "caption"));
        box.getStyleClass().add("evidence");
        evidenceWords(appraisal).forEach(words -> box.getChildren().add(styled(words, "body")));
        VBox.setMargin(box, new javafx.geometry.Insets(14, 0, 0, 0));
        return box;
    }

    private static List<String> evidenceWords(Appraisal appraisal) {
        List<String> words = new ArrayList<>();
        if (!appraisal.session().readings().isEmpty()) {
            appraisal.health().reasons().stream().limit(MOST_EVIDENCE).forEach(words::add);
        }
        if (!appraisal.dyno().pulls().isEmpty()) {
            words.add(appraisal.dyno().answer().plain());
        }
        if (!appraisal.changes().changes().isEmpty()) {
            // the rest of a long answer stands on its own sheet
            words.add(Sentences.first(appraisal.changes().answer().plain(), 1));
        }
        return words.isEmpty() ? List.of("None. Nothing has been measured on this car.") : words;
    }

    private static Label styled(String words, String styleClass) {
        Label label = new Label(words);
        label.getStyleClass().add(styleClass);
        label.setWrapText(true);
        return label;
    }
}
