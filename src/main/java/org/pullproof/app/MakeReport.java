package org.pullproof.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import org.pullproof.advice.Appraisal;
import org.pullproof.files.BadFileException;
import org.pullproof.files.Reason;
import org.pullproof.files.WholeFile;
import org.pullproof.report.Format;
import org.pullproof.report.HtmlReport;
import org.pullproof.report.Paper;
import org.pullproof.report.PdfReport;
import org.pullproof.report.ReportMaker;
import org.pullproof.report.ReportModel;
import org.pullproof.report.TextReport;

/** Makes the report of a session: the whole job on paper. */
public final class MakeReport {
    private final Clock clock;

    /**
     * @param clock tells when a report is made
     */
    public MakeReport(Clock clock) {
        this.clock = clock;
    }

    /** What the report says. */
    public ReportModel model(Appraisal appraisal) {
        return new ReportMaker().make(appraisal, LocalDateTime.now(clock));
    }

    /** The report as plain text, lines of at most 80 characters. */
    public String text(Appraisal appraisal) {
        return new TextReport().write(model(appraisal));
    }

    /**
     * The report as the bytes of a file.
     *
     * @param paper matters only to PDF
     */
    public byte[] bytes(Appraisal appraisal, Format format, Paper paper) {
        return switch (format) {
            case TEXT -> text(appraisal).getBytes(StandardCharsets.UTF_8);
            case HTML -> new HtmlReport().write(model(appraisal)).getBytes(StandardCharsets.UTF_8);
            case PDF -> new PdfReport().write(model(appraisal), paper);
        };
    }

    /**
     * Writes the report to a file, all of it or nothing; a file of that name is replaced.
     *
     * @throws BadFileException if it cannot be written; the old file is then as it was
     */
    public void write(Appraisal appraisal, Format format, Paper paper, Path target) throws BadFileException {
        write(bytes(appraisal, format, paper), target);
    }

    /**
     * Writes finished bytes to a file, all of them or nothing.
     *
     * @throws BadFileException if they cannot be written; the old file is then as it was
     */
    public void write(byte[] bytes, Path target) throws BadFileException {
        try {
            new WholeFile().write(target, bytes);
        } catch (IOException failed) {
            throw new BadFileException(target.toString(), "", "it could not be written: " + Reason.of(failed) + ".");
        }
    }
}
