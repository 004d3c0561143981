package org.pullproof.ui.parts;

import java.util.function.Supplier;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;

/** Ctrl C copies the table of a sheet, unless words are being typed: then it copies those. */
public final class CopyKey {
    private static final KeyCombination COPY = new KeyCodeCombination(KeyCode.C, KeyCombination.SHORTCUT_DOWN);

    private CopyKey() {}

    /** Copies if the key says so, and consumes it then. */
    public static void copy(KeyEvent key, Supplier<String> table) {
        if (!COPY.match(key) || key.getTarget() instanceof TextInputControl) {
            return;
        }
        ClipboardContent content = new ClipboardContent();
        content.putString(table.get());
        Clipboard.getSystemClipboard().setContent(content);
        key.consume();
    }
}
