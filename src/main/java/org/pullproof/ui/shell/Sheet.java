package org.pullproof.ui.shell;

import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.input.KeyEvent;
import org.pullproof.advice.Stage;

/**
 * The work area of a stage below its answer. The shell shows question and answer itself and lets the sheet scroll; a sheet
 * shows the appraisal of its view-model and follows it.
 */
public interface Sheet {
    Stage stage();

    /** The same node every time. */
    Node node();

    /** The page it shows now. */
    default ObservableValue<SheetPage> page() {
        return new ReadOnlyObjectWrapper<SheetPage>(new SheetPage.Own()).getReadOnlyProperty();
    }

    /**
     * A key pressed anywhere in the window while this sheet is open; letters alone arrive only while no text is being typed.
     * A key that was used is consumed.
     */
    default void key(KeyEvent key) {}
}
