package org.pullproof.ui;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import org.pullproof.advice.Appraisal;
import org.pullproof.app.BackgroundRunner;
import org.pullproof.app.MakeReport;
import org.pullproof.report.Format;
import org.pullproof.report.Paper;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.units.UnitSystem;

/** Asks where the report is to go and writes it there, in the format its ending names. */
final class ReportSaver {
    private static final Map<String, Format> ENDINGS =
            Map.of("pdf", Format.PDF, "html", Format.HTML, "txt", Format.TEXT);

    private final MakeReport makeReport;
    private final BackgroundRunner runner;
    private final Supplier<Window> owner;

    ReportSaver(MakeReport makeReport, BackgroundRunner runner, Supplier<Window> owner) {
        this.makeReport = makeReport;
        this.runner = runner;
        this.owner = owner;
    }

    void save(SessionViewModel model) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("Report");
        chooser.setInitialFileName("report.pdf");
        chooser.getExtensionFilters()
                .setAll(List.of(
                        new FileChooser.ExtensionFilter("PDF", "*.pdf"),
                        new FileChooser.ExtensionFilter("HTML", "*.html"),
                        new FileChooser.ExtensionFilter("Plain text", "*.txt")));
        Optional.ofNullable(chooser.showSaveDialog(owner.get()))
                .map(File::toPath)
                .ifPresent(file -> write(model, file));
    }

    void write(SessionViewModel model, Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        Optional<Format> format = Optional.ofNullable(ENDINGS.get(name.substring(name.lastIndexOf('.') + 1)));
        if (format.isEmpty()) {
            model.say("The report is written as .pdf, .html or .txt: give " + file.getFileName()
                    + " one of these endings.");
            return;
        }
        Appraisal appraisal = model.appraisal();
        Paper paper = appraisal.figures().system() == UnitSystem.US ? Paper.LETTER : Paper.A4;
        runner.run(
                () -> {
                    makeReport.write(appraisal, format.get(), paper, file);
                    return file;
                },
                written -> model.say("The report is in " + written + "."),
                failure -> model.say(String.valueOf(failure.getMessage())));
    }
}
