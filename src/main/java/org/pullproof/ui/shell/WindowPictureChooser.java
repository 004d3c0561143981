package org.pullproof.ui.shell;

import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.stage.FileChooser;
import javafx.stage.Window;

/** Asks with the chooser of the system. */
public final class WindowPictureChooser implements PictureDesk.Chooser {
    private final Supplier<Window> owner;

    public WindowPictureChooser(Supplier<Window> owner) {
        this.owner = owner;
    }

    @Override
    public Optional<Path> choose() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("A photograph");
        chooser.getExtensionFilters()
                .setAll(
                        new FileChooser.ExtensionFilter(
                                "Photographs", "*.jpg", "*.jpeg", "*.png", "*.JPG", "*.JPEG", "*.PNG"),
                        new FileChooser.ExtensionFilter("All files", "*.*"));
        return Optional.ofNullable(chooser.showOpenDialog(owner.get())).map(File::toPath);
    }
}
