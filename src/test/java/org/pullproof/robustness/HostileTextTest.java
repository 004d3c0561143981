package org.pullproof.robustness;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.pullproof.advice.Appraisal;
import org.pullproof.app.Toolbox;
import org.pullproof.cli.CommandHarness;
import org.pullproof.cli.CommandHarness.Outcome;
import org.pullproof.report.Format;
import org.pullproof.report.Paper;
import org.pullproof.report.ReportPart;
import org.pullproof.testing.FileTree;
import org.pullproof.testing.Tools;
import org.pullproof.units.Figures;
import org.pullproof.units.UnitSystem;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Hostile words in every text of a session do nothing in any output but stand there. */
class HostileTextTest {
    private static final List<String> COMMANDS =
            List.of("health", "steps", "pulls", "changes", "worth", "next", "report", "check", "versions", "judgement");

    private final Toolbox tools = Tools.ofTheProgram();

    @TempDir
    private Path place;

    private Path car;

    static Stream<String> words() {
        return HostileSession.WORDS.stream();
    }

    @BeforeEach
    void aFinishedCar() throws Exception {
        car = place.resolve("car");
        FileTree.copy(Path.of("demo-sessions", "grey-coupe"), car);
    }

    private Appraisal appraised() throws Exception {
        return tools.appraise().of(tools.desk().open(car), new Figures(UnitSystem.US));
    }

    @Test
    void everyOutputShowsThemAndDoesNothing() throws Exception {
        String words = String.join(" ", HostileSession.WORDS);
        Set<String> plain = tags(html(appraised()));

        assertThat(HostileSession.fill(car, words)).isGreaterThan(20);

        Appraisal appraisal = appraised();
        assertThat(appraisal.session().car().name()).isEqualTo(words);
        String html = html(appraisal);
        assertThat(tags(html)).isEqualTo(plain);
        assertThat(Inertness.steers(html)).isFalse();
        assertThat(Inertness.steers(tools.makeReport().text(appraisal))).isFalse();
        pdfIsInert(tools.makeReport().bytes(appraisal, car, ReportPart.all(), Format.PDF, Paper.A4));
        COMMANDS.forEach(this::commandIsInert);
    }

    private String html(Appraisal appraisal) {
        return new String(
                tools.makeReport().bytes(appraisal, car, ReportPart.all(), Format.HTML, Paper.A4),
                StandardCharsets.UTF_8);
    }

    /** Every kind of element with its kinds of attributes: HTML and the SVG in it. */
    private static Set<String> tags(String html) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        Document document = factory.newDocumentBuilder().parse(new InputSource(new StringReader(html)));
        Set<String> tags = new TreeSet<>();
        NodeList all = document.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            Element element = (Element) all.item(i);
            for (int j = 0; j < element.getAttributes().getLength(); j++) {
                tags.add(element.getTagName() + " "
                        + element.getAttributes().item(j).getNodeName());
            }
            tags.add(element.getTagName());
        }
        return tags;
    }

    private static void pdfIsInert(byte[] pdf) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getDocumentCatalog().getNames()).isNull();
            for (PDPage page : document.getPages()) {
                assertThat(page.getAnnotations()).isEmpty();
            }
        }
    }

    private void commandIsInert(String command) {
        Outcome outcome = new CommandHarness(tools).run(command, car);
        assertThat(Inertness.steers(outcome.out() + outcome.err())).as(command).isFalse();
        assertThat(outcome.err()).as(command).doesNotContain("This should not happen");
    }

    @ParameterizedTest
    @MethodSource("words")
    void aPullFileOfSuchANameIsKeptInsideTheFolderUnderAPlainName(String words) throws Exception {
        Path pulls = car.resolve("pulls");
        List<String> before = FileTree.names(pulls);
        new org.pullproof.files.SessionFolder(car).keep(words + ".csv", "rpm".getBytes(StandardCharsets.UTF_8));
        assertThat(FileTree.names(pulls)).hasSize(before.size() + 1).noneMatch(Inertness::steers);
        assertThat(FileTree.names(place)).containsExactly("car");
        assertThat(Files.exists(place.resolve("etc"))).isFalse();
    }
}
