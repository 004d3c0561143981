package org.pullproof.ui.dynoday;

import java.io.File;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.Labels;

/** Takes in pull files, dropped or chosen, for a setup that the person names. */
final class DropPanel extends VBox {
    private static final int MOST_LEFT = 3;

    private final DynoDayViewModel model;
    private final WatchViewModel watch;
    private final PullFileChooser chooser;
    private final ComboBox<String> setup = new ComboBox<>();
    private final Label problem = Labels.wrapped("", "refusal");
    private final Label what = Labels.wrapped(
            "CSV from the dyno: rpm with power or torque, units in the header, one pull a file. The file is kept as it came;"
                    + " you say which setup it was.",
            "second");
    private final VBox explained = new VBox(Labels.whole("Drop pull files here", "title"), what);

    DropPanel(DynoDayViewModel model, WatchViewModel watch, PullFileChooser chooser) {
        this.model = model;
        this.watch = watch;
        this.chooser = chooser;
        getStyleClass().add("drop-panel");
        setup.setId("pull-setup");
        setup.setEditable(true);
        setup.setAccessibleText("Setup these pulls were made on");
        setup.getEditor().setPromptText("name of the setup");
        setup.valueProperty().bindBidirectional(model.setupProperty());
        setup.getEditor()
                .textProperty()
                .addListener((ObservableValue<? extends String> of, String before, String text) ->
                        model.setupProperty().set(text));
        model.problemProperty().addListener((of, before, after) -> show());
        watch.folderProperty().addListener((of, before, after) -> show());
        model.takingIn().progressProperty().addListener((of, before, after) -> show());
        setOnDragOver(this::over);
        setOnDragDropped(this::dropped);
        show();
    }

    private Node choice() {
        Button choose = Actions.plain("Choose files", "Ctrl I");
        choose.setOnAction(pressed -> choose());
        VBox named = new VBox(Labels.whole("Made on setup, known or new", "caption"), setup);
        HBox line = new HBox(8, named, choose);
        line.setAlignment(javafx.geometry.Pos.BOTTOM_LEFT);
        return line;
    }

    private Node watching() {
        Button button = watch.folderProperty()
                .get()
                .map(folder -> Actions.plain("Stop watching", "Ctrl Shift I"))
                .orElseGet(() -> Actions.plain("Watch a folder", "Ctrl Shift I"));
        button.setId("watch-folder");
        button.setOnAction(pressed -> watchOrStop());
        HBox line = new HBox(8, button);
        line.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
        watch.folderProperty()
                .get()
                .ifPresent(folder -> line.getChildren()
                        .add(Labels.wrapped("new files in " + folder.getFileName() + " become pulls", "caption")));
        return line;
    }

    /** Asks for a folder to watch, or watches no longer. */
    void watchOrStop() {
        if (watch.folderProperty().get().isPresent()) {
            watch.stop();
        } else {
            chooser.folder().ifPresent(watch::watch);
        }
    }

    private Node going(String far) {
        Button stop = Actions.plain("Stop, take none", "");
        stop.setId("stop-taking-in");
        stop.setOnAction(pressed -> model.takingIn().stop());
        HBox line = new HBox(8, Labels.whole(far, "caption"), stop);
        line.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
        return line;
    }

    void choose() {
        model.takeIn(chooser.choose());
    }

    private void over(DragEvent drag) {
        if (drag.getDragboard().hasFiles()) {
            drag.acceptTransferModes(TransferMode.COPY);
            drag.consume();
        }
    }

    private void dropped(DragEvent drag) {
        drop(drag.getDragboard().getFiles());
        drag.setDropCompleted(true);
        drag.consume();
    }

    /** Takes in files that were let go over the sheet, in order of their names. */
    void drop(List<File> files) {
        model.takeIn(files.stream()
                .map(File::toPath)
                .sorted(Comparator.comparing(Path::toString))
                .toList());
    }

    void show() {
        List<String> names = model.setupNames();
        if (!setup.getItems().equals(names)) {
            String typed = model.setupProperty().get();
            setup.setItems(FXCollections.observableList(names));
            setup.setValue(typed);
        }
        boolean first = !model.anyPull();
        getStyleClass().remove("empty");
        if (first) {
            getStyleClass().add("empty");
            getChildren().setAll(explained, choice());
        } else {
            getChildren().setAll(choice());
        }
        getChildren().add(watching());
        String far = model.takingIn().progressProperty().get();
        if (!far.isEmpty()) {
            getChildren().add(going(far));
        }
        String why = model.problemProperty().get();
        if (!why.isEmpty()) {
            problem.setText(why);
            getChildren().add(problem);
        }
        model.leftOut().stream().limit(MOST_LEFT).forEach(words -> getChildren().add(Labels.wrapped(words, "caption")));
    }
}
