package org.pullproof.ui.shell;

import javafx.scene.Node;
import org.pullproof.units.Sentence;

/** How much of the window a sheet takes for the page it shows. */
public sealed interface SheetPage {
    /** The work area; the question of its stage and the answer stand above it. */
    record Own() implements SheetPage {}

    /** The work area, under a question and an answer of its own. */
    record Headed(String question, Sentence answer) implements SheetPage {}

    /** The whole window, with the keyboard to itself. */
    record Whole(Node node) implements SheetPage {}
}
