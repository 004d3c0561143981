package org.pullproof.ui.shell;

import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.pullproof.advice.Stage;
import org.pullproof.advice.StageProgress;
import org.pullproof.ui.parts.Mark;

/** One stage on the rail: mark, name, key and three words; the open one is joined to the sheet. */
final class StageTab extends ToggleButton {
    private final Stage stage;
    private final Face face;

    StageTab(Stage stage, int number) {
        this.stage = stage;
        this.face = new Face(stage, "Ctrl " + number);
        getStyleClass().add("stage");
        setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        setGraphic(face);
        setMaxWidth(Double.MAX_VALUE);
        face.prefWidthProperty().bind(widthProperty());
        face.prefHeightProperty().bind(heightProperty());
    }

    Stage stage() {
        return stage;
    }

    void show(StageProgress progress) {
        face.show(progress);
        setAccessibleText(stage.words() + ": " + progress.words() + ", " + inWords(progress.progress()));
    }

    private static String inWords(StageProgress.Progress progress) {
        return switch (progress) {
            case NOT_BEGUN -> "not begun";
            case UNDER_WAY -> "under way";
            case DONE -> "done";
        };
    }

    private static final class Face extends StackPane {
        private static final double THREAD_LEFT = 26;
        private static final double MARK_TOP = 11;

        private final StackPane mark = new StackPane();
        private final Label words = new Label();
        private final Region above = thread();
        private final Region below = thread();

        Face(Stage stage, String key) {
            setMouseTransparent(true);
            setAlignment(Pos.TOP_LEFT);
            above.setVisible(stage != Stage.CAR);
            below.setVisible(stage != Stage.WORTH_IT);
            mark.setMaxSize(16, 16);
            StackPane.setMargin(mark, new Insets(MARK_TOP, 0, 0, THREAD_LEFT - 8));
            getChildren().setAll(above, below, mark, text(stage, key));
        }

        private static Region thread() {
            Region thread = new Region();
            thread.getStyleClass().add("thread");
            thread.setManaged(false);
            return thread;
        }

        private Node text(Stage stage, String key) {
            Label name = new Label(stage.words());
            name.getStyleClass().add("stage-name");
            name.setMinWidth(USE_PREF_SIZE);
            Label keyLabel = new Label(key);
            keyLabel.getStyleClass().add("key");
            words.getStyleClass().add("stage-words");
            words.setWrapText(true);
            BorderPane line = new BorderPane(null, null, keyLabel, null, name);
            BorderPane.setMargin(keyLabel, new Insets(3, 0, 0, 0));
            VBox text = new VBox(line, words);
            VBox.setVgrow(words, Priority.ALWAYS);
            text.setPadding(new Insets(9, 10, 0, 44));
            return text;
        }

        void show(StageProgress progress) {
            words.setText(progress.words());
            mark.getChildren().setAll(shape(progress.progress()).node());
        }

        private static Mark shape(StageProgress.Progress progress) {
            return switch (progress) {
                case NOT_BEGUN -> Mark.RING;
                case UNDER_WAY -> Mark.HALF;
                case DONE -> Mark.FILLED;
            };
        }

        @Override
        protected void layoutChildren() {
            super.layoutChildren();
            double markBottom = MARK_TOP + 13;
            above.resizeRelocate(THREAD_LEFT, 0, 1, MARK_TOP + 3);
            below.resizeRelocate(THREAD_LEFT, markBottom, 1, Math.max(0, getHeight() - markBottom));
        }
    }
}
