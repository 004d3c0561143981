package org.pullproof.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pullproof.files.BadFileException;
import org.pullproof.report.Format;
import org.pullproof.report.Paper;
import org.pullproof.report.ReportPart;
import org.pullproof.testing.GreyCoupe;
import org.pullproof.testing.Tools;

class MakeReportTest {
    private final MakeReport reports =
            new MakeReport(Tools.cautions(), Clock.fixed(Instant.parse("2026-06-14T17:10:00Z"), ZoneOffset.UTC));

    @TempDir
    private Path folder;

    @Test
    void theReportTellsWhenItWasMade() {
        assertThat(reports.text(GreyCoupe.appraisal())).contains("Made: 14 Jun 2026, 17:10");
    }

    @Test
    void aPdfFileBeginsAsOne() throws IOException {
        Path target = folder.resolve("report.pdf");

        reports.write(reports.bytes(GreyCoupe.untouched(), folder, ReportPart.all(), Format.PDF, Paper.A4), target);

        assertThat(new String(Files.readAllBytes(target), StandardCharsets.ISO_8859_1))
                .startsWith("%PDF-");
    }

    @Test
    void anOldFileIsReplacedAndNothingElseIsLeft() throws IOException {
        Path target = Files.writeString(folder.resolve("report.txt"), "old");

        reports.write(reports.bytes(GreyCoupe.untouched(), folder, ReportPart.all(), Format.TEXT, Paper.A4), target);

        assertThat(target).content().startsWith("Report on an engine");
        assertThat(folder.toFile().list()).containsExactly("report.txt");
    }

    @Test
    void aFolderThatIsNotThereIsToldWithTheFile() {
        Path target = folder.resolve("not/there/report.html");

        assertThatThrownBy(() -> reports.write(new byte[] {1}, target))
                .isInstanceOf(BadFileException.class)
                .hasMessageContaining(target.toString());
    }
}
