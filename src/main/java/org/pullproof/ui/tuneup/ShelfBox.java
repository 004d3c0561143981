package org.pullproof.ui.tuneup;

import java.time.format.DateTimeFormatter;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pullproof.session.About;
import org.pullproof.tuneup.TuneUpFindings.OffCar;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.CheckedField;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.PictureStrip;

/** The off-car shelf: every part that is off, since when, where it lies, its pictures, and on which cylinders it is back. */
final class ShelfBox extends VBox {
    private static final DateTimeFormatter SINCE = DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.ENGLISH);

    /** Room for one small picture, or the button that attaches one. */
    private static final double STRIP = 84;

    private final TuneUpViewModel model;
    private final BenchViewModel bench;
    private final PictureStrip.Acts pictures;
    private final Label count = Labels.whole("", "caption");
    private final VBox rows = new VBox();
    private final Map<String, Row> known = new HashMap<>();
    private final CheckedField<String> more = new CheckedField<>("Something else came off", text -> text);

    ShelfBox(TuneUpViewModel model, BenchViewModel bench, PictureStrip.Acts pictures) {
        this.model = model;
        this.bench = bench;
        this.pictures = pictures;
        getStyleClass().add("framed");
        more.field().setId("more-off");
        more.field().setPromptText("something else came off: a hose, a connector, a bolt");
        more.onTaken(name -> {
            bench.takeOff(name, more::refuse);
            if (!more.isRefused()) {
                more.show("");
            }
        });
        getChildren().setAll(Labels.whole("Off-car shelf", "section"), count, rows, more);
    }

    void show() {
        List<OffCar> off = model.findings().offCar();
        count.setText(off.size() + (off.size() == 1 ? " thing is" : " things are") + " off the car");
        known.keySet().retainAll(off.stream().map(OffCar::part).toList());
        KeptRows.show(rows, off.stream().map(this::row).toList());
    }

    private Row row(OffCar part) {
        Row row = known.computeIfAbsent(part.part(), name -> new Row(part));
        row.show(part);
        return row;
    }

    /** The field or button the key S comes to. */
    Node first() {
        return rows.getChildren().stream()
                .flatMap(row -> row instanceof Row first ? Stream.of(first.back) : Stream.empty())
                .map(Node.class::cast)
                .findFirst()
                .orElse(more.field());
    }

    /** One part; it keeps what is typed in it while the rest changes. */
    private final class Row extends VBox {
        private final Button back = link("back on");
        private final Label since = Labels.wrapped("", "caption");
        private final CheckedField<String> note;
        private final FlowPane cylinders = new FlowPane(8, 2);
        private final PictureStrip strip;

        Row(OffCar off) {
            super(2);
            getStyleClass().add("row");
            Label name = Labels.wrapped(off.part());
            HBox.setHgrow(name, Priority.ALWAYS);
            name.setMaxWidth(Double.MAX_VALUE);
            back.setAccessibleText("Put back: " + off.part());
            back.setOnAction(pressed -> model.putBack(off.part()));
            HBox head = new HBox(8, name, back);
            head.setAlignment(Pos.CENTER_LEFT);
            note = new CheckedField<>("Note on " + off.part(), text -> text);
            note.field().setPromptText("where it lies, which bolt goes where");
            note.onTaken(words -> bench.note(off.part(), words, note::refuse));
            note.onForgotten(() -> bench.note(off.part(), "", note::refuse));
            strip = new PictureStrip(About.part(off.part()), pictures);
            HBox.setHgrow(note, Priority.ALWAYS);
            HBox beside = new HBox(8, note, strip);
            strip.setAlignment(Pos.CENTER_RIGHT);
            strip.setPrefWrapLength(STRIP);
            strip.setMinWidth(STRIP);
            getChildren().setAll(head, since);
            off.fitted().ifPresent(fitted -> boxes(off.part()));
            getChildren().add(beside);
        }

        private void boxes(String part) {
            cylinders.getChildren().add(Labels.whole("back on", "caption"));
            for (int cylinder = 1; cylinder <= bench.cylinders(); cylinder++) {
                int number = cylinder;
                CheckBox box = new CheckBox(String.valueOf(number));
                box.setAccessibleText(part + " back on cylinder " + number);
                box.setOnAction(pressed -> bench.fit(part, number, box.isSelected()));
                cylinders.getChildren().add(box);
            }
            getChildren().add(cylinders);
        }

        void show(OffCar off) {
            since.setText("since " + SINCE.format(off.since())
                    + off.step().map(step -> ", step " + step).orElse("")
                    + off.stays().map(why -> "; stays off: " + why).orElse(""));
            if (!note.isChanged() && !note.isRefused()) {
                note.show(off.note());
            }
            Set<Integer> fitted = off.fitted().orElse(Set.of());
            cylinders.getChildren().stream()
                    .filter(CheckBox.class::isInstance)
                    .map(CheckBox.class::cast)
                    .forEach(box -> box.setSelected(fitted.contains(Integer.valueOf(box.getText()))));
            strip.show();
        }
    }

    private static Button link(String words) {
        Button button = Actions.plain(words, "");
        button.getStyleClass().add("link");
        return button;
    }
}
