package org.pullproof.ui.tuneup;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pullproof.tuneup.Outfit;
import org.pullproof.tuneup.Step;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.CheckedField;
import org.pullproof.ui.parts.Labels;

/** A step edited for this car: what it needs, what comes off and must be back, minutes, torques. Nothing is kept before Keep. */
final class StepForm extends VBox {
    private final TuneUpViewModel model;
    private final CheckedField<String> title = words("Title of the step");
    private final CheckedField<Integer> minutes = new CheckedField<>("Minutes of the step", StepForm::readMinutes);
    private final CheckedField<String> needs = words("Steps that come first");
    private final CheckedField<String> off = words("Parts it takes off");
    private final CheckedField<String> back = words("Must be back before the start");
    private final CheckedField<String> figures = words("Torques and gaps");
    private final Label refusal = Labels.wrapped("", "refusal");
    private Optional<Step> step = Optional.empty();

    /**
     * @param close puts the form away
     */
    StepForm(TuneUpViewModel model, Runnable close) {
        super(4);
        this.model = model;
        GridPane grid = new GridPane();
        grid.setHgap(8);
        grid.setVgap(3);
        row(grid, "what", title);
        row(grid, "minutes", minutes);
        row(grid, "after steps", needs);
        row(grid, "takes off", off);
        row(grid, "must be back", back);
        row(grid, "torque, gap", figures);
        Button keep = Actions.plain("Keep for this car", "");
        keep.setOnAction(pressed -> keep());
        Button reset = link("all steps as the program has them");
        reset.setOnAction(pressed -> model.resetSteps(this::refuse));
        Button leave = link("leave");
        leave.setOnAction(pressed -> close.run());
        getChildren().setAll(grid, new HBox(8, keep, leave, reset));
    }

    private static Button link(String words) {
        Button button = Actions.plain(words, "");
        button.getStyleClass().add("link");
        return button;
    }

    private static CheckedField<String> words(String name) {
        return new CheckedField<>(name, text -> text);
    }

    private static void row(GridPane grid, String caption, CheckedField<?> field) {
        GridPane.setHgrow(field, Priority.ALWAYS);
        grid.addRow(grid.getRowCount(), Labels.whole(caption, "caption"), field);
    }

    private static int readMinutes(String typed) {
        if (!typed.strip().matches("\\d{1,4}") || Integer.parseInt(typed.strip()) < 1) {
            throw new IllegalArgumentException("Write whole minutes, 1 or more.");
        }
        return Integer.parseInt(typed.strip());
    }

    /** Shows a step to be edited; figures stay apart by semicolons, all else by commas. */
    void show(Step shown) {
        step = Optional.of(shown);
        getChildren().remove(refusal);
        title.show(shown.title());
        minutes.show(String.valueOf(shown.minutes()));
        needs.show(String.join(", ", shown.needs()));
        off.show(String.join(", ", shown.takesOff()));
        back.show(String.join(", ", shown.backBeforeStart()));
        figures.show(String.join("; ", shown.outfit().figures()));
        title.field().requestFocus();
    }

    private void keep() {
        boolean stands = Stream.of(title, minutes, needs, off, back, figures).allMatch(CheckedField::take);
        if (stands) {
            step.ifPresent(before -> edit(before, this::refuse));
        }
    }

    private void edit(Step before, Consumer<String> refused) {
        try {
            model.edit(edited(before), refused);
        } catch (IllegalArgumentException wrong) {
            refused.accept(String.valueOf(wrong.getMessage()));
        }
    }

    private Step edited(Step before) {
        Outfit outfit = before.outfit();
        List<String> takesOff = list(off, ",");
        return new Step(
                before.id(),
                title.value().orElse(""),
                list(needs, ","),
                before.after(),
                takesOff,
                before.putsBack(),
                list(back, ","),
                minutes.value().orElse(0),
                before.parts(),
                before.cautions(),
                before.heat(),
                before.kind(),
                new Outfit(
                        outfit.eachCylinder().stream()
                                .filter(takesOff::contains)
                                .toList(),
                        outfit.tools(),
                        list(figures, ";"),
                        outfit.buys(),
                        outfit.work(),
                        outfit.later()));
    }

    private static List<String> list(CheckedField<String> field, String between) {
        return field.value().stream()
                .flatMap(text -> Stream.of(text.split(between, -1)))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .toList();
    }

    private void refuse(String why) {
        refusal.setText(why);
        if (!getChildren().contains(refusal)) {
            getChildren().add(refusal);
        }
    }
}
