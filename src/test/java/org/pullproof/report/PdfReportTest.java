package org.pullproof.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.advice.Appraisal;
import org.pullproof.testing.GreyCoupe;
import org.pullproof.testing.Tools;

class PdfReportTest {
    @Test
    void itsWordsCanBeRead() throws IOException {
        try (PDDocument pdf = pdf(GreyCoupe.appraisal(), Paper.A4)) {
            assertThat(words(pdf))
                    .contains(
                            "Is this engine sound?",
                            "All eight cylinders agree within 5 %",
                            "Exhaust gas kills indoors",
                            "The maker's service manual and a licensed professional take precedence");
        }
    }

    @Test
    void pagesAreNumbered() throws IOException {
        try (PDDocument pdf = pdf(GreyCoupe.appraisal(), Paper.A4)) {
            int pages = pdf.getNumberOfPages();

            assertThat(pages).isGreaterThan(1);
            assertThat(words(pdf)).contains("1 of " + pages, pages + " of " + pages);
        }
    }

    @Test
    void everyTypefaceIsEmbedded() throws IOException {
        try (PDDocument pdf = pdf(GreyCoupe.appraisal(), Paper.A4)) {
            assertThat(fonts(pdf)).isNotEmpty().allMatch(PDFont::isEmbedded);
        }
    }

    @Test
    void theTypefacesAreThoseOfTheLook() throws IOException {
        try (PDDocument pdf = pdf(GreyCoupe.appraisal(), Paper.A4)) {
            assertThat(fonts(pdf))
                    .extracting(PDFont::getName)
                    .allMatch(name -> name.matches(".*(IBMPlex|SourceSerif).*"));
        }
    }

    /** A4 is 210 × 297 mm (ISO 216), Letter 8.5 × 11 in (ANSI Y14.1); 72 points an inch. */
    @ParameterizedTest
    @CsvSource({"A4, 595.3, 841.9", "LETTER, 612, 792"})
    void pagesHaveTheSizeOfThePaper(Paper paper, float width, float height) throws IOException {
        try (PDDocument pdf = pdf(GreyCoupe.appraisal(), paper)) {
            assertThat(pdf.getPage(0).getMediaBox().getWidth()).isCloseTo(width, within(0.5f));
            assertThat(pdf.getPage(0).getMediaBox().getHeight()).isCloseTo(height, within(0.5f));
        }
    }

    @Test
    void hostileWordsArePrintedAsWords() throws IOException {
        try (PDDocument pdf = pdf(GreyCoupe.appraisalSaying("<img src='x'/> & <b>"), Paper.A4)) {
            assertThat(words(pdf)).contains("<img src='x'/> & <b>");
        }
    }

    @Test
    void anUntouchedCarHasAReport() throws IOException {
        try (PDDocument pdf = pdf(GreyCoupe.untouched(), Paper.LETTER)) {
            assertThat(words(pdf)).contains("Nothing is measured yet");
        }
    }

    private static PDDocument pdf(Appraisal appraisal, Paper paper) throws IOException {
        ReportModel report = new ReportMaker(Tools.cautions()).make(appraisal, LocalDateTime.of(2026, 6, 14, 17, 10));
        return Loader.loadPDF(new PdfReport().write(report, paper));
    }

    private static String words(PDDocument pdf) throws IOException {
        return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
    }

    private static List<PDFont> fonts(PDDocument pdf) throws IOException {
        List<PDFont> fonts = new ArrayList<>();
        for (PDPage page : pdf.getPages()) {
            PDResources resources = page.getResources();
            for (COSName name : resources.getFontNames()) {
                fonts.add(resources.getFont(name));
            }
        }
        return fonts;
    }
}
