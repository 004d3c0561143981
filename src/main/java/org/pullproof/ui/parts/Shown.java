package org.pullproof.ui.parts;

import javafx.scene.Node;

/** Shows or hides a part of a sheet without taking it out, so that the keyboard stays where it is. */
public final class Shown {
    private Shown() {}

    public static void only(Node part, boolean shown) {
        part.setVisible(shown);
        part.setManaged(shown);
    }
}
