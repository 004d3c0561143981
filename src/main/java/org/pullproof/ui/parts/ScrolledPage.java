package org.pullproof.ui.parts;

import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;

/** A page of the window. Where the window is smaller than the page can be, it scrolls; nothing is cut. */
public final class ScrolledPage extends ScrollPane {
    public ScrolledPage(Region page) {
        super(page);
        getStyleClass().add("scrolled-page");
        setFitToWidth(true);
        setFitToHeight(true);
        setFocusTraversable(false);
    }
}
