package org.pullproof.ui;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import org.pullproof.app.BackgroundRunner;
import org.pullproof.app.ShareSession;
import org.pullproof.ui.shell.SessionViewModel;

/** Asks for the zip of a shared session, to be written or to be opened. */
final class Sharing {
    private final ShareSession share;
    private final BackgroundRunner runner;
    private final Supplier<Window> owner;

    Sharing(ShareSession share, BackgroundRunner runner, Supplier<Window> owner) {
        this.share = share;
        this.runner = runner;
        this.owner = owner;
    }

    /** Asks which shared session is to be opened. */
    Optional<Path> choose() {
        return Optional.ofNullable(chooser("A shared session").showOpenDialog(owner.get()))
                .map(File::toPath);
    }

    /** Asks where to, and packs the session; what came of it is said at the foot. */
    void save(SessionViewModel model) {
        FileChooser chooser = chooser("Share this session");
        chooser.setInitialFileName(model.open().folder().getFileName() + ".zip");
        Optional.ofNullable(chooser.showSaveDialog(owner.get()))
                .map(File::toPath)
                .ifPresent(file -> save(model, file));
    }

    /** Packs the session into a file; what came of it is said at the foot. */
    void save(SessionViewModel model, Path file) {
        Path session = model.open().folder();
        runner.run(
                () -> share.share(session, file),
                model::say,
                failure -> model.say(String.valueOf(failure.getMessage())));
    }

    private static FileChooser chooser(String title) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(title);
        chooser.getExtensionFilters().setAll(List.of(new FileChooser.ExtensionFilter("Shared session", "*.zip")));
        return chooser;
    }
}
