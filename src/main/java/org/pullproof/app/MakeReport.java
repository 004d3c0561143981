package org.pullproof.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.Set;
import org.pullproof.advice.Appraisal;
import org.pullproof.advice.Cautions;
import org.pullproof.files.BadFileException;
import org.pullproof.files.Reason;
import org.pullproof.files.SessionFolder;
import org.pullproof.files.WholeFile;
import org.pullproof.report.Format;
import org.pullproof.report.HtmlReport;
import org.pullproof.report.Paper;
import org.pullproof.report.PdfReport;
import org.pullproof.report.ReportMaker;
import org.pullproof.report.ReportModel;
import org.pullproof.report.ReportPart;
import org.pullproof.report.TextReport;
import org.pullproof.session.Picture;

/** Makes the report of a session: the whole job on paper. */
public final class MakeReport {
    /** Longer side of a photograph in the report, px. */
    private static final int PHOTO = 480;

    private final ReportMaker maker;
    private final Clock clock;

    /**
     * @param cautions by act
     * @param clock tells when a report is made
     */
    public MakeReport(Cautions cautions, Clock clock) {
        this.maker = new ReportMaker(cautions);
        this.clock = clock;
    }

    /** What the parts wanted say, the photographs in words. */
    public ReportModel model(Appraisal appraisal, Set<ReportPart> parts) {
        return maker.make(appraisal, LocalDateTime.now(clock), parts, picture -> Optional.of(new byte[0]));
    }

    /** The whole report as plain text, lines of at most 80 characters. */
    public String text(Appraisal appraisal) {
        return new TextReport().write(model(appraisal, ReportPart.all()));
    }

    /**
     * The report as the bytes of a file.
     *
     * @param folder of the session, where its photographs lie
     * @param parts those wanted
     * @param paper matters only to PDF
     */
    public byte[] bytes(Appraisal appraisal, Path folder, Set<ReportPart> parts, Format format, Paper paper) {
        ReportModel report = maker.make(appraisal, LocalDateTime.now(clock), parts, picture -> small(folder, picture));
        return switch (format) {
            case TEXT -> new TextReport().write(report).getBytes(StandardCharsets.UTF_8);
            case HTML -> new HtmlReport().write(report).getBytes(StandardCharsets.UTF_8);
            case PDF -> new PdfReport().write(report, paper);
        };
    }

    /** A lost photograph is told in the report and does not stop it. */
    private static Optional<byte[]> small(Path folder, Picture picture) {
        try {
            return Optional.of(new SessionFolder(folder).photograph(picture).thumbnail(PHOTO));
        } catch (BadFileException lost) {
            return Optional.empty();
        }
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
