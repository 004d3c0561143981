package org.pullproof.ui.tuneup;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.Pane;

/** Rows that stay where they are while nothing comes or goes: a row that is put in anew loses the focus. */
final class KeptRows {
    private KeptRows() {}

    static void show(Pane pane, List<? extends Node> rows) {
        if (!pane.getChildren().equals(rows)) {
            pane.getChildren().setAll(rows);
        }
    }
}
