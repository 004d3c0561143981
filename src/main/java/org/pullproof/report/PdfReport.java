package org.pullproof.report;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URL;
import java.util.Objects;

/** Writes a report as PDF, black on white, with its typefaces embedded and its drawings as lines. */
public final class PdfReport {
    /** The bytes of the PDF file. */
    public byte[] write(ReportModel report, Paper paper) {
        Palette palette = Palette.print();
        String xhtml = new Page(report, Stylesheet.paper(palette, paper), new SvgPainter(palette), true).xhtml();
        return ofPage(xhtml);
    }

    /** The bytes of a PDF file of any page that is styled for paper. */
    static byte[] ofPage(String xhtml) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (BatikSVGDrawer svg = new BatikSVGDrawer()) {
            XRLog.setLoggingEnabled(false);
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.useUnicodeLineBreaker(new WordBreaks());
            builder.useFastMode().useSVGDrawer(svg).usePdfUaAccessibility(true);
            Stylesheet.fonts().forEach(font -> use(builder, font));
            builder.withHtmlContent(xhtml, baseUri()).withProducer("Pullproof").toStream(out);
            builder.run();
        } catch (IOException broken) {
            throw new UncheckedIOException("The PDF could not be made", broken);
        }
        return out.toByteArray();
    }

    private static void use(PdfRendererBuilder builder, Stylesheet.Font font) {
        builder.useFont(
                () -> Stylesheet.open(Stylesheet.FONTS + font.file()),
                font.family(),
                font.weight(),
                FontStyle.NORMAL,
                true);
    }

    /** The folder of the typefaces: words in drawings are set from there. */
    private static String baseUri() {
        String first = Stylesheet.fonts().get(0).file();
        URL place = Objects.requireNonNull(PdfReport.class.getResource(Stylesheet.FONTS + first), first);
        String whole = place.toExternalForm();
        return whole.substring(0, whole.length() - first.length());
    }
}
