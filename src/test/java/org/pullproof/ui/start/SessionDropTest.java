package org.pullproof.ui.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SessionDropTest {
    @TempDir
    private Path folder;

    @Test
    void aFolderWithASessionAndAZipAreOpened() throws Exception {
        Path session = Files.createDirectory(folder.resolve("car"));
        Files.writeString(session.resolve("session.json"), "{}");
        Path zip = Files.writeString(folder.resolve("Shared.ZIP"), "");

        assertThat(SessionDrop.of(List.of(session.toFile()))).contains(session);
        assertThat(SessionDrop.of(List.of(zip.toFile()))).contains(zip);
    }

    @Test
    void pullFilesAndOtherFoldersAreLeftToTheSheets() throws Exception {
        Path pull = Files.writeString(folder.resolve("base.csv"), "");

        assertThat(SessionDrop.of(List.of(pull.toFile()))).isEmpty();
        assertThat(SessionDrop.of(List.of(folder.toFile()))).isEmpty();
        assertThat(SessionDrop.of(List.of(pull.toFile(), pull.toFile()))).isEmpty();
    }
}
