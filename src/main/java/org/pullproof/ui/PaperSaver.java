package org.pullproof.ui;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import org.pullproof.app.BackgroundRunner;
import org.pullproof.app.MakeReport;
import org.pullproof.report.Format;
import org.pullproof.report.Paper;
import org.pullproof.ui.shell.SessionViewModel;

/** Asks where something printed is to go and writes it there, in the format the ending names. */
final class PaperSaver {
    private final MakeReport writer;
    private final BackgroundRunner runner;
    private final Supplier<Window> owner;
    private final Supplier<Paper> paper;

    /**
     * @param paper to print on, as chosen last
     */
    PaperSaver(MakeReport writer, BackgroundRunner runner, Supplier<Window> owner, Supplier<Paper> paper) {
        this.writer = writer;
        this.runner = runner;
        this.owner = owner;
        this.paper = paper;
    }

    /** Something that can be printed. */
    @FunctionalInterface
    interface Printed {
        byte[] as(Format format, Paper paper);
    }

    /**
     * Asks where to, and writes.
     *
     * @param name what it is called: "The report"
     * @param fileName proposed, without its ending
     */
    void save(SessionViewModel model, String name, String fileName, Printed printed) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(name);
        chooser.setInitialFileName(fileName + ".pdf");
        chooser.getExtensionFilters()
                .setAll(List.of(
                        new FileChooser.ExtensionFilter("PDF", "*.pdf"),
                        new FileChooser.ExtensionFilter("HTML", "*.html"),
                        new FileChooser.ExtensionFilter("Plain text", "*.txt")));
        Optional.ofNullable(chooser.showSaveDialog(owner.get()))
                .map(File::toPath)
                .ifPresent(file -> write(model, name, printed, file));
    }

    /** Writes to a file; what came of it is said at the foot. */
    void write(SessionViewModel model, String name, Printed printed, Path file) {
        Optional<Format> format = Format.of(file.getFileName().toString());
        if (format.isEmpty()) {
            model.say(
                    name + " is written as .pdf, .html or .txt: give " + file.getFileName() + " one of these endings.");
            return;
        }
        Paper sheet = paper.get();
        runner.run(
                () -> {
                    writer.write(printed.as(format.get(), sheet), file);
                    return file;
                },
                written -> model.say(name + " is in " + written + "."),
                failure -> model.say(String.valueOf(failure.getMessage())));
    }
}
