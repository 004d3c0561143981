package org.pullproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.advice.Appraisal;
import org.pullproof.app.Toolbox;
import org.pullproof.testing.FileTree;
import org.pullproof.testing.Tools;
import org.pullproof.units.Figures;
import org.pullproof.units.UnitSystem;

/** What a demo's report prints lies inside its paper: no table runs off, no page is empty. */
class PageFitTest {
    /** Where the margin begins; a letter may reach a hair over it. */
    private static final double HAIR = 1;

    private static final double PIXEL_POINTS = 0.75;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"green-hatch, A4", "green-hatch, LETTER", "grey-coupe, A4", "grey-coupe, LETTER", "blue-wagon, A4"})
    void noWordReachesIntoTheMarginAndNoPageIsEmpty(String demo, Paper paper) throws Exception {
        byte[] pdf = new PdfReport()
                .write(
                        new ReportMaker(Tools.cautions()).make(appraised(demo), LocalDateTime.of(2026, 6, 14, 17, 10)),
                        paper);

        try (PDDocument document = Loader.loadPDF(pdf)) {
            double right = document.getPage(0).getMediaBox().getWidth() - PIXEL_POINTS * paper.sideMargin() + HAIR;
            Positions positions = new Positions();
            positions.getText(document);
            assertThat(positions.beyond(right)).isEmpty();
            assertThat(positions.wordsOfTheEmptiestPage(document)).isGreaterThan(60);
        }
    }

    private Appraisal appraised(String demo) throws Exception {
        FileTree.copy(Path.of("demo-sessions", demo), folder.resolve(demo));
        Toolbox tools = Tools.ofTheProgram();
        return tools.appraise().of(tools.desk().open(folder.resolve(demo)), new Figures(UnitSystem.US));
    }

    /** Where each letter stands. */
    private static final class Positions extends PDFTextStripper {
        private final List<TextPosition> letters = new ArrayList<>();

        @Override
        protected void processTextPosition(TextPosition letter) {
            letters.add(letter);
            super.processTextPosition(letter);
        }

        List<String> beyond(double right) {
            return letters.stream()
                    .filter(letter -> !letter.getUnicode().isBlank())
                    .filter(letter -> letter.getXDirAdj() + letter.getWidthDirAdj() > right)
                    .map(letter -> letter.getUnicode() + " at " + letter.getXDirAdj())
                    .toList();
        }

        int wordsOfTheEmptiestPage(PDDocument document) throws IOException {
            int least = Integer.MAX_VALUE;
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper one = new PDFTextStripper();
                one.setStartPage(page);
                one.setEndPage(page);
                least = Math.min(least, one.getText(document).split("\\s+").length);
            }
            return least;
        }
    }
}
