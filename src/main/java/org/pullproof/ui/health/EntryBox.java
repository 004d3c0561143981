package org.pullproof.ui.health;

import java.util.List;
import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.pullproof.health.TestKind;
import org.pullproof.ui.parts.Cautions;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.PictureStrip;

/** Types readings of one group of tests and lists what was read, with the cautions of the test beside it. */
final class EntryBox extends HBox {
    private static final List<String> BEGIN = List.of(
            "Type the drop of each cylinder in the balance test; it needs the engine running and nothing removed.",
            "With the plugs out, type compression, dry first. Strokes and throttle are kept from one cylinder to the next.",
            "Enter keeps a reading and goes on to the next cylinder.",
            "At the car, F2 opens fender mode: one number, big, by keys alone.");

    private final HealthViewModel model;
    private final Function<TestKind, List<String>> cautionsOf;
    private final EntryForm form;
    private final ReadingsTable readings;
    private final PictureStrip pictures;
    private final Label chosen = Labels.whole("", "section");
    private final Label chosenWords = Labels.wrapped("", "caption");
    private final VBox beside = new VBox();
    private final Cautions cautions = new Cautions();

    /**
     * @param cautionsOf the cautions that stand at a test
     * @param pictures photographs of cylinders, plugs and what a borescope shows
     */
    EntryBox(HealthViewModel model, Function<TestKind, List<String>> cautionsOf, PictureStrip.Acts pictures) {
        super(24);
        this.model = model;
        this.cautionsOf = cautionsOf;
        this.form = new EntryForm(model);
        this.readings = new ReadingsTable(model);
        this.pictures = new PictureStrip(model.pictured(), pictures);
        getStyleClass().add("health-body");
        getChildren().setAll(left(), right());
    }

    private Node left() {
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        HBox title = new HBox(8, chosen, chosenWords, space, form.keepButton());
        title.setAlignment(Pos.CENTER_LEFT);
        VBox left = new VBox(title, form, readings, pictures);
        VBox.setVgrow(readings, Priority.ALWAYS);
        left.getStyleClass().add("chosen-cylinder");
        HBox.setHgrow(left, Priority.ALWAYS);
        return left;
    }

    private Node right() {
        beside.getStyleClass().add("rules");
        ScrollPane scroll = new ScrollPane(beside);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setAccessibleText("Cautions for this test");
        scroll.getStyleClass().add("why");
        return scroll;
    }

    void show() {
        int cylinder = model.entry().cylinderProperty().get();
        chosen.setText(model.ofWholeEngine() ? "Whole engine" : "Cylinder " + cylinder);
        chosenWords.setText(model.ofWholeEngine() ? "" : model.tile(cylinder).words());
        readings.show();
        pictures.show(model.pictured());
        beside.getChildren().clear();
        if (!model.anythingRead()) {
            beside.getChildren().add(Labels.whole("Begin here", "section"));
            BEGIN.forEach(sentence -> beside.getChildren().add(Labels.wrapped(sentence)));
        }
        cautions.show(cautionsOf.apply(model.entry().testProperty().get()));
        beside.getChildren().addAll(Labels.whole("Before you begin", "section"), cautions);
    }

    /** Says at the reading why what was pasted cannot be taken in. */
    void refuse(String why) {
        form.refuse(why);
    }

    /** Gives the keyboard to the reading of the chosen cylinder. */
    void type() {
        // a field that was not shown yet takes no figure before it is styled
        applyCss();
        form.type();
    }
}
