package org.pullproof.ui.tuneup;

import java.util.List;
import java.util.stream.Stream;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pullproof.tuneup.Afterwards;
import org.pullproof.tuneup.Afterwards.Again;
import org.pullproof.tuneup.BreakIn;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.Cautions;
import org.pullproof.ui.parts.CheckedField;
import org.pullproof.ui.parts.Labels;

/** Work done on cylinders, what beds in since, and what is looked at again. */
final class AfterBox extends VBox {
    private final BenchViewModel bench;
    private final ComboBox<String> what = new ComboBox<>();
    private final CheckedField<List<Integer>> cylinders =
            new CheckedField<>("Cylinders the work was done on", AfterBox::readCylinders);
    private final VBox due = new VBox(2);
    private String shown = "";

    AfterBox(BenchViewModel bench) {
        super(6);
        this.bench = bench;
        what.getItems().setAll(BenchViewModel.work());
        what.setAccessibleText("Work done");
        what.setId("work-done");
        what.setPromptText("work");
        cylinders.field().setPromptText("cylinders: 3, 6; or all");
        HBox.setHgrow(cylinders, Priority.ALWAYS);
        Button record = Actions.plain("Work done", "");
        record.setOnAction(pressed -> record());
        getChildren()
                .setAll(
                        Labels.section("Work done", "readings from before it no longer count"),
                        new HBox(8, what, cylinders, record),
                        Labels.section("Afterwards", ""),
                        due);
    }

    private void record() {
        if (what.getValue() == null) {
            cylinders.refuse("Choose what was done, then the cylinders it was done on.");
        } else if (cylinders.field().getText().isBlank()) {
            cylinders.refuse("Write the cylinders it was done on, such as 3, 6; or all.");
        } else if (cylinders.take()) {
            bench.worked(what.getValue(), cylinders.value().orElse(List.of()), cylinders::refuse);
        }
    }

    static List<Integer> readCylinders(String typed) {
        String text = typed.strip();
        if (text.equalsIgnoreCase("all")) {
            return List.of();
        }
        if (!text.matches("\\d{1,2}([ ,;]+\\d{1,2})*")) {
            throw new IllegalArgumentException("Write the cylinders it was done on, such as 3, 6; or all.");
        }
        return Stream.of(text.split("[ ,;]+", -1)).map(Integer::valueOf).toList();
    }

    /** Boxes keep the focus as long as the list is the same. */
    void show() {
        Afterwards after = bench.findings().afterwards();
        String now = after.toString() + bench.bedding();
        if (!now.equals(shown)) {
            shown = now;
            due.getChildren().setAll(rows(after));
        }
    }

    private List<Node> rows(Afterwards after) {
        Cautions lock = new Cautions();
        lock.show(after.fullLoadLock().stream().toList());
        Stream<Node> rules = after.breakIn().stream().map(rule -> Labels.wrapped(rule, "caption"));
        Stream<Node> bedded = bench.bedding().stream().map(this::bedded);
        Stream<Node> again = after.again().stream().map(this::box);
        Stream<Node> none = after.again().isEmpty()
                ? Stream.of(Labels.wrapped("What is looked at again stands here once steps are ticked.", "caption"))
                : Stream.empty();
        return Stream.of(Stream.<Node>of(lock), rules, bedded, again, none, Stream.<Node>of(fresh()))
                .flatMap(nodes -> nodes)
                .toList();
    }

    private CheckBox box(Again again) {
        CheckBox box = new CheckBox(again.what() + ": " + again.when());
        box.setWrapText(true);
        box.setMinHeight(USE_PREF_SIZE);
        box.setSelected(again.done());
        box.setOnAction(pressed -> bench.lookedAt(again, box.isSelected()));
        return box;
    }

    private Node bedded(BreakIn breakIn) {
        CheckedField<String> why = new CheckedField<>(
                "Why it counts as bedded in: " + breakIn.what().words(), text -> text);
        why.field().setPromptText(breakIn.what().words() + ": bedded in, because");
        why.onTaken(reason -> bench.bedded(breakIn.what(), reason, why::refuse));
        return why;
    }

    private Node fresh() {
        HBox line = new HBox(8, Labels.whole("New in the engine", "caption"));
        line.setAlignment(Pos.CENTER_LEFT);
        for (BreakIn.What part : BreakIn.What.values()) {
            Button button = Actions.plain(part.key(), "");
            button.getStyleClass().add("link");
            button.setAccessibleText("New in the engine, has to bed in: " + part.words());
            button.setOnAction(pressed -> bench.fresh(part));
            line.getChildren().add(button);
        }
        return line;
    }
}
