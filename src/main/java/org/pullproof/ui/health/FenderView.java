package org.pullproof.ui.health;

import java.util.Map;
import java.util.Objects;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;
import org.pullproof.ui.health.FenderViewModel.Phase;

/** Fender mode in the whole window: before the first reading its conditions and cautions, then one number, big. */
final class FenderView extends StackPane {
    private static final String STYLE = "/org/pullproof/ui/fender.css";

    private final FenderViewModel model;
    private final FenderStart start;
    private final FenderReadingView reading;
    private final Map<KeyCode, Runnable> acts;

    FenderView(FenderViewModel model) {
        this.model = model;
        this.start = new FenderStart(model);
        this.reading = new FenderReadingView(model);
        this.acts = Map.of(
                KeyCode.ENTER, model::enter,
                KeyCode.LEFT, model::back,
                KeyCode.BACK_SPACE, model::erase,
                KeyCode.F2, model::conditions);
        getStyleClass().add("fender");
        getStylesheets()
                .add(Objects.requireNonNull(FenderView.class.getResource(STYLE), STYLE)
                        .toExternalForm());
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.TEXT_FIELD);
        model.phaseProperty().addListener((of, before, after) -> show());
        model.screenProperty().addListener((of, before, after) -> setAccessibleText(spoken(after)));
        setAccessibleText(spoken(model.screen()));
        addEventFilter(KeyEvent.KEY_PRESSED, this::press);
        addEventHandler(KeyEvent.KEY_TYPED, this::type);
        show();
    }

    private static String spoken(FenderScreen screen) {
        return screen.title() + ", cylinder " + screen.cylinder() + ", " + screen.label() + ": " + screen.typed() + " "
                + screen.unit() + ". "
                + screen.said().map(sentence -> sentence.plain()).orElse("");
    }

    private boolean isReading() {
        return model.phaseProperty().get() != Phase.BEFORE;
    }

    private void show() {
        Node shown = isReading() ? reading : start;
        if (!getChildren().contains(shown)) {
            getChildren().setAll(shown);
            if (isReading()) {
                requestFocus();
            } else {
                start.begin();
            }
        }
    }

    /** The keyboard goes to the first field of the conditions, or to the one number. */
    @Override
    public void requestFocus() {
        if (isReading()) {
            super.requestFocus();
        } else {
            start.begin();
        }
    }

    private void press(KeyEvent key) {
        if (key.getCode() == KeyCode.ESCAPE && !start.isCorrecting(key.getTarget())) {
            model.leave();
            key.consume();
        } else if (key.getCode() == KeyCode.Z
                && key.isShortcutDown()
                && !(key.getTarget() instanceof TextInputControl)) {
            undoOrRedo(key);
        } else if (!isReading() && key.getCode() == KeyCode.ENTER && !(key.getTarget() instanceof Button)) {
            start.beginReading();
            key.consume();
        } else if (isReading() && acts.containsKey(key.getCode())) {
            acts.getOrDefault(key.getCode(), () -> {}).run();
            key.consume();
        }
    }

    private void undoOrRedo(KeyEvent key) {
        if (key.isShiftDown()) {
            model.redo();
        } else {
            model.undo();
        }
        key.consume();
    }

    private void type(KeyEvent key) {
        String typed = key.getCharacter();
        if (isReading() && typed.length() == 1 && !key.isShortcutDown() && typed.charAt(0) >= ' ') {
            model.type(typed.charAt(0));
            key.consume();
        }
    }
}
