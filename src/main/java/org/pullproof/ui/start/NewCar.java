package org.pullproof.ui.start;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.OtherEngine;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.WindowSteps;

/** Three questions about one's own car: its name, its engine, and the folder its session is kept in. */
public final class NewCar extends VBox {
    private static final double LEAST_LIST = 160;

    private final TextField name = new TextField();
    private final ListView<EngineProfile> engines = new ListView<>();
    private final TextField folder = new TextField();
    private final Label problem = Labels.wrapped("", "red");
    private final Path parent;

    /** What happens with the answers. */
    public interface Begun {
        void begin(String name, EngineProfile engine, Path folder);
    }

    /**
     * @param parent the folder sessions are kept in unless another is typed
     * @param chooser asks for a folder
     */
    public NewCar(
            List<EngineProfile> profiles, Path parent, Supplier<Optional<Path>> chooser, Begun begun, Runnable back) {
        super(10);
        this.parent = parent;
        getStyleClass().add("title-ways");
        name.setAccessibleText("Name of the car");
        name.textProperty().addListener((of, before, now) -> suggestFolder(now));
        folder.setAccessibleText("Folder of the session");
        offer(profiles, begun);
        WindowSteps.follow(this);
        getChildren()
                .setAll(
                        Labels.whole("Begin with your own car", "title"),
                        Labels.whole("What do you call it?", "section"),
                        name,
                        Labels.section("Which engine is it?", "arrows choose; it can be changed later"),
                        engines,
                        Labels.wrapped(OtherEngine.allInOneSentence(), "caption"),
                        Labels.whole("Where is its session kept?", "section"),
                        folderLine(chooser),
                        problem,
                        beginButton(begun),
                        backButton(back));
    }

    private void offer(List<EngineProfile> profiles, Begun begun) {
        engines.getItems().setAll(profiles);
        engines.setCellFactory(list -> new EngineCell());
        engines.getSelectionModel().select(0);
        engines.setAccessibleText("Engine");
        engines.setMinHeight(LEAST_LIST);
        VBox.setVgrow(engines, Priority.ALWAYS);
        // a list keeps Enter to itself, so the default button would not hear it
        engines.setOnKeyPressed(key -> {
            if (key.getCode() == KeyCode.ENTER) {
                begin(begun);
            }
        });
    }

    private HBox folderLine(Supplier<Optional<Path>> chooser) {
        Button choose = Actions.plain("Choose folder", "");
        choose.setOnAction(pressed -> chooser.get().ifPresent(path -> folder.setText(path.toString())));
        HBox.setHgrow(folder, Priority.ALWAYS);
        return new HBox(8, folder, choose);
    }

    private Button beginButton(Begun begun) {
        Button begin = Actions.go("Begin", "Enter");
        begin.setDefaultButton(true);
        begin.setOnAction(pressed -> begin(begun));
        return begin;
    }

    private static Button backButton(Runnable back) {
        Button cancel = Actions.plain("Back", "Esc");
        cancel.setCancelButton(true);
        cancel.setOnAction(pressed -> back.run());
        return cancel;
    }

    private void suggestFolder(String typed) {
        String safe = typed.strip().toLowerCase(java.util.Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
        folder.setText(safe.isEmpty() ? "" : parent.resolve(safe).toString());
    }

    private void begin(Begun begun) {
        EngineProfile engine = engines.getSelectionModel().getSelectedItem();
        if (name.getText().isBlank()) {
            say("Give the car a name first.");
            name.requestFocus();
        } else if (folder.getText().isBlank() || engine == null) {
            say("Choose an engine and a folder first.");
        } else {
            begun.begin(name.getText().strip(), engine, Path.of(folder.getText().strip()));
        }
    }

    /** Says why it could not be begun; what was typed stays. */
    public void say(String sentence) {
        problem.setText(sentence);
    }

    /** Gives the name the keyboard. */
    public void focusFirst() {
        name.requestFocus();
    }

    private static final class EngineCell extends ListCell<EngineProfile> {
        @Override
        protected void updateItem(@Nullable EngineProfile profile, boolean empty) {
            super.updateItem(profile, empty);
            setText(profile == null || empty ? "" : profile.name());
        }
    }
}
