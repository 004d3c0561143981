package org.pullproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.pullproof.session.Session;
import org.pullproof.testing.Tools;
import org.pullproof.testing.Xml;

class TallySheetTest {
    static Stream<Arguments> sheets() {
        return Stream.of("i3-coil-on-plug", "v8-distributor-order-a", "v12-coil-on-plug")
                .flatMap(profile -> Stream.of(TallyKind.values())
                        .flatMap(kind -> Stream.of(Paper.values()).map(paper -> Arguments.of(profile, kind, paper))));
    }

    private static TallySheet sheet(String profile, TallyKind kind, String car) {
        return Tools.ofTheProgram().makeTally().sheet(Session.begin(car, Tools.profile(profile)), kind);
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void itIsOnePageForEveryEngine(String profile, TallyKind kind, Paper paper) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(TallyPage.pdf(sheet(profile, kind, "Grey coupé"), paper))) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(1);
        }
    }

    @Test
    void theLastNoteIsOnThePageToo() throws IOException {
        TallySheet sheet = sheet("v12-coil-on-plug", TallyKind.LEAKDOWN, "Grey coupé");
        try (PDDocument pdf = Loader.loadPDF(TallyPage.pdf(sheet, Paper.LETTER))) {
            assertThat(new PDFTextStripper().getText(pdf)).contains("turn the crank once round");
        }
    }

    @ParameterizedTest
    @EnumSource
    void hostileWordsStayWords(TallyKind kind) {
        String html = TallyPage.html(sheet("i4-coil-on-plug", kind, "</td><script>\u0000"));

        assertThat(Xml.parse(html).getElementsByTagName("script").getLength()).isZero();
    }

    @Test
    void compressionHasABoxForFirstStrokeDryAgainAndWet() {
        assertThat(sheet("i4-coil-on-plug", TallyKind.COMPRESSION, "Grey coupé").columns())
                .extracting(TallySheet.Column::head)
                .contains("First stroke", "Dry", "Dry, again", "Wet");
    }

    @Test
    void theConditionsOfTheRunAreAskedOnce() {
        assertThat(sheet("i4-coil-on-plug", TallyKind.COMPRESSION, "Grey coupé").fields())
                .extracting(TallySheet.Field::name)
                .contains(
                        "Strokes counted",
                        "Throttle",
                        "Plugs",
                        "Engine",
                        "Battery while cranking",
                        "Cranking speed",
                        "Gauge",
                        "Step of the gauge",
                        "Station pressure",
                        "Oil, if wet",
                        "Read by");
    }

    @Test
    void oilHasItsCautionOnTheCompressionSheetAndTheManualComesLast() {
        assertThat(sheet("i4-coil-on-plug", TallyKind.COMPRESSION, "Grey coupé").cautions())
                .doesNotHaveDuplicates()
                .anyMatch(caution -> caution.startsWith("A spoon of oil"))
                .last()
                .asString()
                .contains("take precedence");
    }

    @Test
    void whereToListenStandsOnTheLeakDownSheet() {
        assertThat(sheet("i4-coil-on-plug", TallyKind.LEAKDOWN, "Grey coupé").notes())
                .anyMatch(note -> note.contains("bubbles in the radiator"))
                .anyMatch(note -> note.contains("Whistle"));
    }
}
