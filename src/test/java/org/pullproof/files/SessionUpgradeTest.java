package org.pullproof.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pullproof.session.Session;
import org.pullproof.weather.Readings;

/** {@code session-format-1.json} was written by the program as it was when the format was 1. */
class SessionUpgradeTest {
    @TempDir
    private Path folder;

    private Path document;

    @BeforeEach
    void aSessionOfFormatOne() throws Exception {
        document = folder.resolve("session.json");
        try (InputStream in = SessionUpgradeTest.class.getResourceAsStream("session-format-1.json")) {
            Files.write(document, Objects.requireNonNull(in).readAllBytes());
        }
    }

    @Test
    void airOfFormatOneIsReadAsTheStationPressureItWas() throws Exception {
        Session session = new SessionFolder(folder).read();
        assertThat(session.days().get(0).air())
                .containsExactly(
                        Readings.air("2026-06-14T13:40", "94.20kPa", "85F", "60%"),
                        Readings.air("2026-06-14T14:40:30", "28.05inHg", "31.5C", "48.5%"));
    }

    @Test
    void aPullOfFormatOneWasMadeWhenItSays() throws Exception {
        Session session = new SessionFolder(folder).read();
        assertThat(session.days().get(0).pulls()).singleElement().satisfies(pull -> {
            assertThat(pull.time()).isEqualTo(LocalDateTime.parse("2026-06-14T13:50"));
            assertThat(pull.takenIn()).isEmpty();
        });
    }

    @Test
    void readingLeavesTheFileAloneAndWritingBringsItUp() throws Exception {
        String before = Files.readString(document);
        Session session = new SessionFolder(folder).read();
        assertThat(document).hasContent(before);
        new SessionFolder(folder).write(session);
        assertThat(Files.readString(document)).startsWith("{\n  \"format\": 2,");
        assertThat(new SessionFolder(folder).read()).isEqualTo(session);
    }

    @Test
    void whatIsWrongInAnOldFileIsNamedAtItsPlace() throws Exception {
        Files.writeString(document, Files.readString(document).replace("\"94.20 kPa\"", "\"94.20 psia\""));
        assertThatThrownBy(() -> new SessionFolder(folder).read())
                .hasMessageContaining("days[0].air[0].pressure.read")
                .hasMessageContaining("psia");
    }
}
