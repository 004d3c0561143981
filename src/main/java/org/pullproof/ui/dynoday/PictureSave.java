package org.pullproof.ui.dynoday;

import org.pullproof.drawing.Drawing;

/** Asks where a picture is to go, and writes it there. */
@FunctionalInterface
public interface PictureSave {
    void save(Drawing picture);
}
