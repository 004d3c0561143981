package org.pullproof.ui.dynoday;

import javafx.scene.layout.VBox;
import org.pullproof.dyno.StatedFigure;
import org.pullproof.ui.parts.CheckedField;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.SentenceFlow;

/** A figure of another dyno's sheet, as stated there, and what it amounts to on this session's standard. */
final class StatedPanel extends VBox {
    private final DynoDayViewModel model;
    private final CheckedField<StatedFigure> field =
            new CheckedField<>("A figure of another sheet", StatedFigure::parse);

    StatedPanel(DynoDayViewModel model) {
        super(6);
        this.model = model;
        getStyleClass().add("stated-panel");
        field.field().setId("stated-figure");
        field.field().setPromptText("248hp sae-j607 wheels; whose sheet");
        field.onTaken(stated -> model.tellStated(stated.text()));
        field.onForgotten(() -> model.tellStated(""));
        show();
    }

    void show() {
        if (!field.isChanged() && !field.isRefused()) {
            field.show(model.model().session().stated().map(StatedFigure::text).orElse(""));
        }
        getChildren().setAll(Labels.whole("A figure of another sheet", "section"), field);
        model.stated()
                .ifPresentOrElse(
                        found -> {
                            getChildren().add(SentenceFlow.of(found.sentence(), "second"));
                            found.missing().forEach(line -> getChildren().add(Labels.wrapped(line, "caption")));
                        },
                        () -> getChildren()
                                .add(Labels.wrapped(
                                        "As far as the sheet says it: power, standard, wheels or crank, its air (98.2kPa 30C 40%).",
                                        "caption")));
    }
}
