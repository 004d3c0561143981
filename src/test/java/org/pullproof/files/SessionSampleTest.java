package org.pullproof.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pullproof.car.Fact;
import org.pullproof.session.Session;

/**
 * {@code session-format-2.json} was written by the program as it was when the format was 2, and is never written anew: a session of
 * then has to be read for ever. What is expected stands in the file for a person to read.
 */
class SessionSampleTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void aSessionOfFormatTwo() throws Exception {
        try (InputStream in = SessionSampleTest.class.getResourceAsStream("session-format-2.json")) {
            Files.write(
                    folder.resolve("session.json"), Objects.requireNonNull(in).readAllBytes());
        }
    }

    @Test
    void everyPartIsRead() throws Exception {
        Session session = new SessionFolder(folder).read();
        assertThat(session.car().name()).isEqualTo("grey coupé \"Nr. 2\"");
        assertThat(session.car().facts()).containsEntry(Fact.ELEVATION, "250,0 m");
        assertThat(session.profile().firing().cylinders()).containsExactly(1, 8, 4, 3, 6, 5, 7, 2);
        assertThat(session.presentSetup()).isEqualTo("timing-32");
        assertThat(session.notes())
                .singleElement()
                .satisfies(note -> assertThat(note.words()).isEqualTo("Line one\nline two"));
        assertThat(session.judgement().of("health.weakDrop")).hasValue(12.0);
    }

    @Test
    void whatWasReadIsWrittenAndReadAgainAlike() throws Exception {
        Session session = new SessionFolder(folder).read();
        new SessionFolder(folder).write(session);
        assertThat(new SessionFolder(folder).read()).isEqualTo(session);
    }
}
