package org.pullproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

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
import org.junit.jupiter.params.provider.ValueSource;
import org.pullproof.cli.CommandHarness.Outcome;

class TallyCommandTest {
    private final CommandHarness pullproof = new CommandHarness();

    @TempDir
    private Path folder;

    private Path session;

    @BeforeEach
    void makeASession() {
        session = folder.resolve("blue-saloon");
        pullproof.run("new", session, "--profile", "v6-odd-fire-90", "--name", "Blue saloon");
    }

    @ParameterizedTest
    @ValueSource(strings = {"balance", "compression", "leakdown", "dyno"})
    void theTextHasItsCautionsAndFitsEightyColumns(String test) {
        Outcome blank = pullproof.run("tally", session, "--test", test);

        assertThat(blank.status()).isZero();
        assertThat(blank.out()).contains("Before you begin", "take precedence", "Blue saloon, V6");
        assertThat(blank.out().lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void leakDownStandsInFiringOrderWithTheTurnsOfAnOddFireEngine() {
        assertThat(pullproof.run("tally", session, "--test", "leakdown").out().lines())
                .anyMatch(line -> line.startsWith("In firing order, 1-6-5-4-3-2"))
                .anyMatch(line -> line.contains("| 6") && line.contains("+150°"))
                .anyMatch(line -> line.contains("| 5") && line.contains("+90°"));
    }

    @Test
    void jsonNamesTheCylindersInTheOrderOfTheTest() {
        assertThat(pullproof
                        .run("tally", session, "--test", "leakdown", "--json")
                        .out())
                .contains("\"cylinders\": [ 1, 6, 5, 4, 3, 2 ]");
    }

    @Test
    void theRunCardHasARowAPullOfThePlanAndWhenToBreakOff() {
        pullproof.run("day", session, "--plan", "base,jets,base", "--pulls", "2", "--at", "2026-06-14T09:00");
        Outcome card = pullproof.run("tally", session, "--test", "dyno");
        assertThat(card.out()).contains("| base-1", "| jets-2", "| base-4", "knock heard", "Straps", "extinguisher");
        assertThat(pullproof.run("tally", session, "--test", "dyno", "--json").out())
                .contains("\"base-1\", \"base-2\", \"jets-1\", \"jets-2\", \"base-3\", \"base-4\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"a4", "letter"})
    void theRunCardIsOnePage(String paper) throws IOException {
        pullproof.run(
                "set", session, "gear=third, 1.00 : 1", "fuel=91 octane, up to 10 % ethanol", "band=2600-5000rpm");
        Path target = folder.resolve("card.pdf");
        pullproof.run("tally", session, "--test", "dyno", "-o", target, "--paper", paper);
        try (PDDocument pdf = Loader.loadPDF(target.toFile())) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(1);
        }
    }

    @Test
    void theEndingOfTheFileSaysPdf() throws IOException {
        Path target = folder.resolve("blank.pdf");

        assertThat(pullproof
                        .run("tally", session, "--test", "compression", "-o", target)
                        .status())
                .isZero();

        assertThat(new String(Files.readAllBytes(target), StandardCharsets.ISO_8859_1))
                .startsWith("%PDF-");
    }

    @Test
    void theEndingOfTheFileSaysHtml() throws IOException {
        Path target = folder.resolve("blank.html");

        pullproof.run("tally", session, "--test", "balance", "-o", target);

        assertThat(Files.readString(target)).startsWith("<!DOCTYPE html>").contains("second round");
    }

    @Test
    void anotherEndingIsWrongUsageAndNamesTheEndingsThereAre() {
        Outcome refused = pullproof.run("tally", session, "--test", "balance", "-o", folder.resolve("blank.odt"));

        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.err()).contains(".pdf, .html or .txt");
    }

    @ParameterizedTest
    @ValueSource(strings = {"lambda", "vacuum"})
    void aTestWithoutASheetIsWrongUsageAndNamesThoseThereAre(String test) {
        Outcome refused = pullproof.run("tally", session, "--test", test);

        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.err()).contains("\"" + test + "\"", "balance, compression, leakdown, dyno");
    }

    /** An operator need not ask for what is known of the car. */
    @Test
    void thePlanForTheOperatorTellsWhatIsKnownOfTheCar() {
        pullproof.run("set", session, "gear=fourth, 1:1", "fuel=91 octane", "band=2600-5000rpm");

        assertThat(pullproof.run("tally", session, "--test", "dyno").out())
                .contains("fourth, 1:1", "91 octane", "2,600 to 5,000");
    }
}
