package org.pullproof.robustness;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pullproof.testing.FileTree;

class KillTest {
    @TempDir
    private Path place;

    @Test
    void afterAKillAtAnyInstantAtMostTheEditInFlightIsMissing() throws Exception {
        FileTree.copy(Path.of("demo-sessions", "grey-coupe"), place.resolve("car"));
        Kills.Outcome outcome = new Kills(place.resolve("car"), 1).kill(5);
        assertThat(outcome.wrong()).isEmpty();
        assertThat(outcome.edits()).isPositive();
    }
}
