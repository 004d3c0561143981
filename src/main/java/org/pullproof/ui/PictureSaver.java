package org.pullproof.ui;

import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import org.pullproof.app.BackgroundRunner;
import org.pullproof.app.MakeReport;
import org.pullproof.drawing.Drawing;
import org.pullproof.report.Palette;
import org.pullproof.report.SvgPainter;
import org.pullproof.ui.parts.PngPicture;
import org.pullproof.ui.shell.SessionViewModel;

/** Asks where a picture is to go and writes it there, as dots or as lines, as the ending says. */
final class PictureSaver {
    private final MakeReport writer;
    private final BackgroundRunner runner;
    private final Supplier<Window> owner;

    PictureSaver(MakeReport writer, BackgroundRunner runner, Supplier<Window> owner) {
        this.writer = writer;
        this.runner = runner;
        this.owner = owner;
    }

    /** Asks where to, and writes. */
    void save(SessionViewModel model, Drawing picture) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("The picture");
        chooser.setInitialFileName("curves.png");
        chooser.getExtensionFilters()
                .setAll(List.of(
                        new FileChooser.ExtensionFilter("Picture of dots (PNG)", "*.png"),
                        new FileChooser.ExtensionFilter("Picture of lines (SVG)", "*.svg")));
        Optional.ofNullable(chooser.showSaveDialog(owner.get()))
                .map(File::toPath)
                .ifPresent(file -> write(model, picture, file));
    }

    /** Writes to a file; what came of it is said at the foot. */
    void write(SessionViewModel model, Drawing picture, Path file) {
        Optional<Callable<byte[]>> bytes = bytes(picture, file.getFileName().toString());
        if (bytes.isEmpty()) {
            model.say("A picture is written as .png or .svg: give " + file.getFileName() + " one of these endings.");
            return;
        }
        runner.run(
                () -> {
                    writer.write(bytes.get().call(), file);
                    return file;
                },
                written -> model.say("The picture is in " + written + "."),
                failure -> model.say(String.valueOf(failure.getMessage())));
    }

    /** Dots are painted here, on the FX thread; the rest is left for later. */
    private static Optional<Callable<byte[]>> bytes(Drawing picture, String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        if (lower.endsWith(".png")) {
            PngPicture dots = PngPicture.of(picture);
            return Optional.of(dots::bytes);
        }
        return lower.endsWith(".svg")
                ? Optional.of(
                        () -> new SvgPainter(Palette.paper()).file(picture).getBytes(StandardCharsets.UTF_8))
                : Optional.empty();
    }
}
