package org.pullproof.ui.shell;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.pullproof.app.AttachPicture;
import org.pullproof.app.BackgroundRunner;
import org.pullproof.session.About;
import org.pullproof.session.Picture;
import org.pullproof.ui.parts.PictureStrip;

/** Attaches photographs to the open session and makes them small, for every sheet that shows some. */
public final class PictureDesk implements PictureStrip.Acts {
    /** Longer side of a small picture, px: twice what a strip shows, for dense displays. */
    private static final int SMALL = 144;

    /** Asks a person for one photograph. */
    @FunctionalInterface
    public interface Chooser {
        /** The file chosen; empty if the person turned back. */
        Optional<Path> choose();
    }

    private final SessionViewModel model;
    private final AttachPicture attachPicture;
    private final BackgroundRunner runner;
    private final Chooser chooser;
    private final Clock clock;
    private final Map<String, byte[]> made = new HashMap<>();

    public PictureDesk(
            SessionViewModel model,
            AttachPicture attachPicture,
            BackgroundRunner runner,
            Chooser chooser,
            Clock clock) {
        this.model = model;
        this.attachPicture = attachPicture;
        this.runner = runner;
        this.chooser = chooser;
        this.clock = clock;
    }

    @Override
    public List<Picture> pictures(About about) {
        return model.session().pictures(about);
    }

    @Override
    public void small(Picture picture, Consumer<byte[]> shown, Consumer<String> lost) {
        Optional<byte[]> known = Optional.ofNullable(made.get(picture.sha256()));
        known.ifPresentOrElse(shown, () -> make(picture, shown, lost));
    }

    private void make(Picture picture, Consumer<byte[]> shown, Consumer<String> lost) {
        Path folder = model.open().folder();
        runner.run(
                () -> attachPicture.thumbnail(folder, picture, SMALL),
                small -> {
                    made.put(picture.sha256(), small);
                    shown.accept(small);
                },
                failure -> lost.accept(SessionViewModel.sentence(failure)));
    }

    @Override
    public void attach(About about) {
        LocalDateTime now = LocalDateTime.now(clock).withNano(0);
        chooser.choose().ifPresent(file -> model.act(open -> attachPicture.attach(open, about, "", file, now)));
    }

    @Override
    public void remove(Picture picture) {
        model.act(open -> attachPicture.remove(open, picture));
    }
}
