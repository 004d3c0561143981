package org.pullproof.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Time is told by hand here; nothing waits. */
class NewFilesTest {
    private static final Instant START = Instant.parse("2026-06-14T12:00:00Z");

    @TempDir
    private Path folder;

    private NewFiles files;

    @BeforeEach
    void anOldFileLiesThere() throws Exception {
        write("old.csv", "rpm,kW\n");
        files = NewFiles.in(folder, Duration.ofSeconds(2));
    }

    @Test
    void aFileIsToldOnceItHasBeenStillForTwoSeconds() throws Exception {
        write("run.csv", "rpm,kW\n");
        assertThat(files.complete(START)).isEmpty();
        assertThat(files.complete(START.plusMillis(1900))).isEmpty();
        assertThat(files.complete(START.plusSeconds(2))).containsExactly(folder.resolve("run.csv"));
        assertThat(files.complete(START.plusSeconds(9))).isEmpty();
    }

    @Test
    void aFileThatGrowsIsWaitedFor() throws Exception {
        write("run.csv", "rpm,kW\n");
        assertThat(files.complete(START)).isEmpty();
        write("run.csv", "2000,40\n");
        assertThat(files.complete(START.plusSeconds(2))).isEmpty();
        write("run.csv", "3000,60\n");
        assertThat(files.complete(START.plusSeconds(4))).isEmpty();
        assertThat(files.complete(START.plusSeconds(6))).hasSize(1);
    }

    @Test
    void anEmptyFileIsWaitedFor() throws Exception {
        write("run.csv", "");
        assertThat(files.complete(START)).isEmpty();
        assertThat(files.complete(START.plusSeconds(60))).isEmpty();
    }

    @Test
    void oneWrittenOverIsToldAgain() throws Exception {
        write("old.csv", "2000,40\n");
        assertThat(files.complete(START)).isEmpty();
        assertThat(files.complete(START.plusSeconds(2))).containsExactly(folder.resolve("old.csv"));
    }

    @Test
    void severalComeInTheOrderOfTheirNamesAndOnlyTables() throws Exception {
        write("b.txt", "x");
        write("a.CSV", "x");
        write("c.part", "x");
        write(".hidden.csv", "x");
        Files.createDirectory(folder.resolve("folder.csv"));
        files.complete(START);
        assertThat(files.complete(START.plusSeconds(2)))
                .containsExactly(folder.resolve("a.CSV"), folder.resolve("b.txt"));
    }

    @Test
    void aFolderThatIsGoneIsSaid() throws Exception {
        Path other = Files.createDirectory(folder.resolve("stick"));
        NewFiles there = NewFiles.in(other, Duration.ofSeconds(2));
        Files.delete(other);
        assertThatThrownBy(() -> there.complete(START)).hasMessageContaining("not watched any more");
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    }
}
