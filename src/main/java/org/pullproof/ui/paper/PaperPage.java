package org.pullproof.ui.paper;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.pullproof.report.Paper;
import org.pullproof.report.ReportPart;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.Choice;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.PageHead;
import org.pullproof.ui.parts.SheetStyle;

/** What can be printed: a tick for each part of the report, the paper, and the cards for the operator and the bench. */
public final class PaperPage extends BorderPane {
    private static final double NARROW = 460;

    private final PaperViewModel model;
    private final PageHead head;
    private final Map<ReportPart, CheckBox> ticks = new EnumMap<>(ReportPart.class);
    private final Button save = Actions.go("Save the report", "Enter");

    /**
     * @param leave closes the page
     */
    public PaperPage(PaperViewModel model, Runnable leave) {
        this.model = model;
        this.head = new PageHead("On paper", leave);
        head.sentenceProperty().bind(model.answerProperty());
        getStyleClass().add("values-page");
        SheetStyle.on(this);
        addEventFilter(KeyEvent.KEY_PRESSED, this::press);
        setTop(head);
        ScrollPane body = new ScrollPane(body());
        body.setFitToWidth(true);
        body.setFocusTraversable(false);
        setCenter(body);
        model.partsProperty().addListener((of, before, after) -> show());
        show();
    }

    private VBox body() {
        save.setId("save-report");
        save.setOnAction(pressed -> model.saveReport());
        VBox report =
                new VBox(8, Labels.section("Parts of the report", "PDF, HTML or text, as the file's ending says"));
        Arrays.stream(ReportPart.values()).map(this::tick).forEach(report.getChildren()::add);
        Button all = button("Everything", "", model::wantAll);
        Button buyer = button("Health sheet for a buyer", "", model::wantHealthSheet);
        buyer.setId("health-sheet");
        report.getChildren().add(new HBox(8, all, buyer));
        VBox body = new VBox(24, report, paper(), save, cards());
        body.setMaxWidth(NARROW);
        body.getStyleClass().add("paper-body");
        return body;
    }

    private CheckBox tick(ReportPart part) {
        CheckBox tick = new CheckBox(part.words());
        tick.setId("part-" + part.key());
        tick.setOnAction(pressed -> model.want(part, tick.isSelected()));
        ticks.put(part, tick);
        return tick;
    }

    private VBox paper() {
        Choice<Paper> choice = new Choice<>("Paper", List.of(Paper.values()), Paper::words);
        choice.setId("paper");
        choice.show(Optional.of(model.paperProperty().get()));
        choice.setMaxWidth(Region.USE_PREF_SIZE);
        choice.onChosen(model::choose);
        return new VBox(8, Labels.section("Paper", "for everything that is printed, also the tally sheets"), choice);
    }

    private VBox cards() {
        Button day = button("Plan of the dyno day, for the operator", "", model::saveDayPlan);
        day.setId("save-day-plan");
        Button card = button("Run card of the tune-up", "", model::saveRunCard);
        card.setId("save-run-card");
        return new VBox(8, Labels.section("Cards beside it", "to be written on"), day, card);
    }

    private static Button button(String words, String key, Runnable act) {
        Button button = Actions.plain(words, key);
        button.setOnAction(pressed -> act.run());
        return button;
    }

    private void show() {
        ticks.forEach(
                (part, tick) -> tick.setSelected(model.partsProperty().get().contains(part)));
        save.setDisable(model.partsProperty().get().isEmpty());
    }

    /** Enter saves, but on another button it presses that one. */
    private void press(KeyEvent key) {
        head.escape(key);
        if (key.getCode() == KeyCode.ENTER) {
            if (key.getTarget() instanceof Button other && !other.equals(save)) {
                other.fire();
            } else {
                model.saveReport();
            }
            key.consume();
        }
    }

    /** The first tick is where the page begins. */
    @Override
    public void requestFocus() {
        Optional.ofNullable(ticks.get(ReportPart.SUMMARY)).ifPresent(CheckBox::requestFocus);
    }
}
