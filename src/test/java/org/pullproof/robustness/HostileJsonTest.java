package org.pullproof.robustness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pullproof.files.BadFileException;
import org.pullproof.files.SessionFolder;

/** JSON that is allowed by its standard (RFC 8259) or nearly so, and is no session. */
class HostileJsonTest {
    @TempDir
    private Path folder;

    private String whole;

    @BeforeEach
    void aWholeSession() throws Exception {
        whole = Files.readString(Path.of("demo-sessions/grey-coupe/session.json"));
    }

    private String refusal(String document) throws Exception {
        Files.writeString(folder.resolve("session.json"), document);
        try {
            new SessionFolder(folder).read();
        } catch (BadFileException refused) {
            return String.valueOf(refused.getMessage());
        }
        throw new AssertionError("It was taken");
    }

    @Test
    void deepNestingIsRefusedByASentence() throws Exception {
        assertThat(refusal("{\"car\":" + "[".repeat(1_000_000))).contains("this is not JSON", "nesting depth");
    }

    @Test
    void aKeyThatStandsTwiceIsRefused() throws Exception {
        assertThat(refusal(whole.replaceFirst("\"format\": \\d,", "\"format\": 2, \"format\": 2,")))
                .contains("Duplicate field 'format'");
    }

    @ParameterizedTest
    @ValueSource(strings = {"NaN", "1e999", "1e308", "99999999999999999999999", "-1", "2.5", "null"})
    void aFormatThatIsNoFormatIsRefused(String number) throws Exception {
        assertThat(refusal(whole.replaceFirst("\"format\": \\d", "\"format\": " + number)))
                .contains("session.json");
    }

    @Test
    void aNumberOfAThousandDigitsIsQuotedInShort() throws Exception {
        assertThat(refusal(whole.replaceFirst("\"name\": \"[^\"]*\"", "\"name\": " + "9".repeat(900))))
                .hasSizeLessThan(300);
    }

    @Test
    void aDocumentThatIsNoPlainFileIsRefused() throws Exception {
        Files.createDirectory(folder.resolve("session.json"));
        assertThatExceptionOfType(BadFileException.class)
                .isThrownBy(() -> new SessionFolder(folder).read())
                .withMessageContaining("this is no plain file");
    }
}
