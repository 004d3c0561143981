package org.pullproof.robustness;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HostileFilesTest {
    @TempDir
    private Path place;

    @Test
    void spoiltFilesAreTakenOrRefusedByASentence() throws Exception {
        try (HostileFiles files = new HostileFiles(place)) {
            HostileFiles.Outcome outcome = files.read(400, 1);
            assertThat(outcome.wrong()).isEmpty();
            assertThat(outcome.refused()).isGreaterThan(100);
            assertThat(outcome.taken()).isGreaterThan(20);
        }
    }
}
