package org.pullproof.ui.dynoday;

import java.io.File;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Window;

/** Asks with the chooser of the system. */
public final class WindowFileChooser implements PullFileChooser {
    private final Supplier<Window> owner;

    public WindowFileChooser(Supplier<Window> owner) {
        this.owner = owner;
    }

    @Override
    public Optional<Path> folder() {
        DirectoryChooser chooser = new DirectoryChooser();
        chooser.setTitle("Folder that pull files come into");
        return Optional.ofNullable(chooser.showDialog(owner.get())).map(File::toPath);
    }

    @Override
    public List<Path> choose() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("Pull files, one pull a file");
        chooser.getExtensionFilters()
                .setAll(
                        new FileChooser.ExtensionFilter("Tables", "*.csv", "*.txt", "*.tsv"),
                        new FileChooser.ExtensionFilter("All files", "*.*"));
        return Optional.ofNullable(chooser.showOpenMultipleDialog(owner.get())).orElse(List.of()).stream()
                .map(File::toPath)
                .sorted(Comparator.comparing(Path::toString))
                .toList();
    }
}
