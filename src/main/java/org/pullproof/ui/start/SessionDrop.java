package org.pullproof.ui.start;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Scene;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;
import org.pullproof.files.SessionFolder;
import org.pullproof.files.SessionZip;

/** A session dropped anywhere on the window is opened: its folder, or a shared one as a zip. Other files are left to the sheets. */
public final class SessionDrop {
    private SessionDrop() {}

    /** The session among dropped files: exactly one thing, which is a folder with a session or a zip. */
    public static Optional<Path> of(List<File> dropped) {
        return dropped.size() != 1
                ? Optional.empty()
                : Optional.of(dropped.get(0).toPath())
                        .filter(path -> new SessionFolder(path).holdsSession() || SessionZip.isNamed(path));
    }

    /** Listens on the whole window, before any part of it. */
    public static void on(Scene scene, Consumer<Path> open) {
        scene.addEventFilter(
                DragEvent.DRAG_OVER,
                drag -> of(drag.getDragboard().getFiles()).ifPresent(session -> {
                    drag.acceptTransferModes(TransferMode.COPY);
                    drag.consume();
                }));
        scene.addEventFilter(
                DragEvent.DRAG_DROPPED,
                drag -> of(drag.getDragboard().getFiles()).ifPresent(session -> {
                    open.accept(session);
                    drag.setDropCompleted(true);
                    drag.consume();
                }));
    }
}
