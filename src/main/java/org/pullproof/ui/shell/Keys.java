package org.pullproof.ui.shell;

import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import org.pullproof.advice.Stage;
import org.pullproof.ui.parts.CheckedField;

/** The keys that work on every sheet. */
public final class Keys {
    private static final List<KeyCode> DIGITS =
            List.of(KeyCode.DIGIT1, KeyCode.DIGIT2, KeyCode.DIGIT3, KeyCode.DIGIT4, KeyCode.DIGIT5, KeyCode.DIGIT6);

    private final MainView view;
    private final SessionViewModel model;
    private final Map<KeyCombination, Runnable> acts = new HashMap<>();

    public Keys(MainView view, SessionViewModel model) {
        this.view = view;
        this.model = model;
        acts.put(control(KeyCode.ENTER), view::doNextStep);
        acts.put(control(KeyCode.P), view::openPaper);
        acts.put(control(KeyCode.J), view::openValues);
        acts.put(control(KeyCode.F), view::openSearch);
        acts.put(control(KeyCode.K), view::openSearch);
        acts.put(control(KeyCode.H), view::openVersions);
        acts.put(control(KeyCode.R), view.acts().readAgain());
        acts.put(
                new KeyCodeCombination(KeyCode.S, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN),
                view.acts().copy());
        acts.put(new KeyCodeCombination(KeyCode.F6), view::rotateFocus);
        acts.put(new KeyCodeCombination(KeyCode.F1), view::openGuide);
        acts.put(new KeyCodeCombination(KeyCode.F1, KeyCombination.SHIFT_DOWN), view::openMethod);
        Iterator<KeyCode> digit = DIGITS.iterator();
        for (Stage stage : Stage.values()) {
            acts.put(control(digit.next()), () -> view.open(stage));
        }
    }

    static KeyCombination control(KeyCode code) {
        return new KeyCodeCombination(code, KeyCombination.SHORTCUT_DOWN);
    }

    /** Uses the key, or hands it to the sheet. */
    public void press(KeyEvent key) {
        if (view.isCovered()) {
            help(key);
            return;
        }
        boolean used = undoOrRedo(key) || act(key) || search(key);
        if (used) {
            key.consume();
        } else if (key.getCode() == KeyCode.ESCAPE) {
            view.shown().key(key);
            model.forgetSaid();
        } else if (key.isShortcutDown() || key.isAltDown() || isFunctionKey(key) || !typing(key)) {
            view.shown().key(key);
        }
    }

    /** A page that a sheet lays over the window keeps all keys but the one for help. */
    private void help(KeyEvent key) {
        if (key.getCode() == KeyCode.F1 && view.isCoveredByItsSheet()) {
            if (key.isShiftDown()) {
                view.openMethod();
            } else {
                view.openGuide();
            }
            key.consume();
        }
    }

    private static boolean isFunctionKey(KeyEvent key) {
        return key.getCode().isFunctionKey();
    }

    private boolean undoOrRedo(KeyEvent key) {
        if (key.getCode() != KeyCode.Z || !key.isShortcutDown() || beingChanged(view.getScene())) {
            return false;
        }
        if (key.isShiftDown()) {
            model.redo();
        } else {
            model.undo();
        }
        return true;
    }

    /** While an entry is half typed, undo belongs to the field. */
    private static boolean beingChanged(Scene scene) {
        for (Node node = scene.getFocusOwner(); node != null; node = node.getParent()) {
            if (node instanceof CheckedField<?> field) {
                return field.isChanged();
            }
        }
        return false;
    }

    /** The stroke of the keyboard that writes "/", wherever it lies. */
    private boolean search(KeyEvent key) {
        boolean slash = key.getText().equals("/") || key.getCode() == KeyCode.SLASH;
        if (!slash || key.isShortcutDown() || key.isAltDown() || typing(key)) {
            return false;
        }
        view.openSearch();
        return true;
    }

    private boolean act(KeyEvent key) {
        return acts.entrySet().stream()
                .filter(act -> act.getKey().match(key))
                .findFirst()
                .map(act -> {
                    act.getValue().run();
                    return true;
                })
                .orElse(false);
    }

    private static boolean typing(KeyEvent key) {
        return key.getTarget() instanceof TextInputControl;
    }
}
