package org.pullproof.ui.shell;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.input.KeyEvent;
import org.pullproof.advice.Stage;
import org.pullproof.ui.search.Found;

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

    /** What a person may look for and do on this sheet, such as at one of its cylinders; the sheet is open when it is done. */
    default List<Found> offers() {
        return List.of();
    }

    /** The heading of the guide about what is shown now, where that is not the chapter of the stage. */
    default Optional<String> heading() {
        return Optional.empty();
    }
}
