package org.pullproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.pullproof.advice.Appraisal;
import org.pullproof.testing.GreyCoupe;
import org.pullproof.testing.Tools;
import org.pullproof.testing.Xml;
import org.w3c.dom.Document;

class HtmlReportTest {
    private static final String HOSTILE = "</td><script>alert(1)</script>\"'&\u0000\ud800<!-- ]]>";

    @Test
    void thePageIsWellFormed() {
        assertThat(page(GreyCoupe.appraisal()).getDocumentElement().getTagName())
                .isEqualTo("html");
    }

    @Test
    void thePageOfAnUntouchedCarIsWellFormed() {
        assertThat(page(GreyCoupe.untouched()).getDocumentElement().getTagName())
                .isEqualTo("html");
    }

    @Test
    void hostileWordsStayWords() {
        Document page = page(GreyCoupe.appraisalSaying(HOSTILE));

        assertThat(page.getElementsByTagName("script").getLength()).isZero();
        assertThat(page.getElementsByTagName("title").item(0).getTextContent())
                .startsWith("</td><script>alert(1)</script>\"'&\ufffd\ufffd<!-- ]]>");
    }

    @Test
    void everyAnswerIsRead() {
        assertThat(page(GreyCoupe.appraisal()).getDocumentElement().getTextContent())
                .contains(
                        "All eight cylinders agree within 5 %",
                        "One of two steps is done", "It makes 207.3 hp at the wheels", "nothing on the list pays");
    }

    @Test
    void drawingsAreLinesNotPixels() {
        Document page = page(GreyCoupe.appraisal());

        assertThat(page.getElementsByTagName("svg").getLength()).isGreaterThan(4);
        assertThat(page.getElementsByTagName("img").getLength()).isZero();
    }

    @Test
    void nothingIsFetchedFromElsewhere() {
        assertThat(html(GreyCoupe.appraisal()).replace("http://www.w3.org/", ""))
                .doesNotContain("http:", "https:");
    }

    private static String html(Appraisal appraisal) {
        return new HtmlReport()
                .write(new ReportMaker(Tools.cautions()).make(appraisal, LocalDateTime.of(2026, 6, 14, 17, 10)));
    }

    private static Document page(Appraisal appraisal) {
        return Xml.parse(html(appraisal));
    }

    /** CSP level 3: without a source for scripts, frames and fetching none of them is allowed, whatever got into the page. */
    @Test
    void thePageForbidsScriptsAndFetching() {
        assertThat(html(GreyCoupe.appraisal()))
                .contains("http-equiv=\"Content-Security-Policy\" content=\"default-src 'none';")
                .doesNotContain("script-src");
    }

    @Test
    void whatIsToBeMindedOfAPullStandsOnALineOfItsOwn() {
        assertThat(html(GreyCoupe.appraisal())).containsPattern("class=\"line\" colspan=\"8\">[^<]*excluded");
    }

    @Test
    void manyNamedValuesStandInTwoColumnsReadDownTheLeftOneFirst() {
        List<ReportModel.Item> items = IntStream.rangeClosed(1, 7)
                .mapToObj(i -> new ReportModel.Item("k" + i, String.valueOf(i), ""))
                .toList();

        assertThat(Page.sideBySide(items))
                .extracting(line -> line.stream().map(ReportModel.Item::name).toList())
                .containsExactly(List.of("1", "5"), List.of("2", "6"), List.of("3", "7"), List.of("4"));
    }
}
