package org.pullproof.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.cli.CommandHarness.Outcome;

class ReportCommandTest {
    private final CommandHarness pullproof = new CommandHarness();

    @TempDir
    private Path folder;

    private Path session;

    @BeforeEach
    void makeASession() {
        session = folder.resolve("grey-coupe");
        pullproof.run("new", session, "--profile", "v8-distributor-order-a", "--name", "Grey coupé");
    }

    @Test
    void withoutAFormatItIsTextOnStandardOutput() {
        Outcome told = pullproof.run("report", session);

        assertThat(told.status()).isZero();
        assertThat(told.out()).startsWith("Report on an engine: Grey coupé, V8").contains("Is this engine sound?");
        assertThat(told.err()).isEmpty();
    }

    @Test
    void jsonIsOneObject() {
        assertThat(pullproof.run("report", session, "--format", "json").out())
                .startsWith("{")
                .endsWith("}" + System.lineSeparator());
    }

    @Test
    void theJsonOptionAsksForTheSame() {
        assertThat(pullproof.run("report", session, "--json").out()).startsWith("{");
    }

    @Test
    void aPdfGoesToAFile() throws IOException {
        Path target = folder.resolve("report.pdf");

        Outcome made = pullproof.run("report", session, "--format", "pdf", "--paper", "letter", "-o", target);

        assertThat(made.status()).isZero();
        assertThat(new String(Files.readAllBytes(target), StandardCharsets.ISO_8859_1))
                .startsWith("%PDF-");
    }

    @Test
    void aPdfWithoutAFileIsWrongUsage() {
        Outcome refused = pullproof.run("report", session, "--format", "pdf");

        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.err()).contains("say where to with -o FILE");
    }

    @Test
    void anHtmlFileIsWhole() throws IOException {
        Path target = folder.resolve("report.html");

        pullproof.run("report", session, "--format", "html", "-o", target);

        assertThat(Files.readString(target)).startsWith("<!DOCTYPE html>").contains("</html>");
    }

    @Test
    void metricUnitsAreAskedForByName() {
        assertThat(pullproof.run("report", session, "--units", "metric").out()).contains("Units: metric");
    }

    @Test
    void aFolderWithoutASessionIsNamed() {
        Outcome refused = pullproof.run("report", folder.resolve("nothing"));

        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err()).contains("nothing");
    }

    @Test
    void anUnknownFormatIsWrongUsage() {
        assertThat(pullproof.run("report", session, "--format", "poster").status())
                .isEqualTo(2);
    }

    @Test
    void partsAreChosenByName() {
        String told =
                pullproof.run("report", session, "--parts", "health,readings").out();

        assertThat(told).startsWith("Health sheet of an engine").doesNotContain("Is it worth more money?");
    }

    @Test
    void anUnknownPartIsRefusedWithThoseThereAre() {
        Outcome refused = pullproof.run("report", session, "--parts", "health,prices");

        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.err()).contains("\"prices\" is no part of the report", "health, tune-up, dyno");
    }

    /** Letter is 612 × 792 points (ANSI Y14.1), A4 595.3 × 841.9 (ISO 216). */
    @ParameterizedTest
    @CsvSource({"us, 612", "metric, 595.3"})
    void withoutAPaperItIsTheUsualOneOfTheUnits(String units, float width) throws IOException {
        Path target = folder.resolve("report.pdf");

        pullproof.run("report", session, "--format", "pdf", "--units", units, "-o", target);

        try (PDDocument pdf = Loader.loadPDF(target.toFile())) {
            assertThat(pdf.getPage(0).getMediaBox().getWidth()).isCloseTo(width, within(0.5f));
        }
    }

    @Test
    void anUnknownPaperIsWrongUsage() {
        assertThat(pullproof.run("report", session, "--paper", "a5").status()).isEqualTo(2);
    }
}
