package org.pullproof.ui;

import java.util.List;
import java.util.function.Consumer;
import org.pullproof.session.About;
import org.pullproof.session.Picture;
import org.pullproof.ui.parts.PictureStrip;

/** A session without photographs, to which none can be attached. */
public final class NoPictures implements PictureStrip.Acts {
    @Override
    public List<Picture> pictures(About about) {
        return List.of();
    }

    @Override
    public void small(Picture picture, Consumer<byte[]> made, Consumer<String> lost) {}

    @Override
    public void attach(About about) {}

    @Override
    public void remove(Picture picture) {}
}
