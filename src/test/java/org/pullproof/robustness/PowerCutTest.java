package org.pullproof.robustness;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PowerCutTest {
    private static final int EVERY = 17;

    @TempDir
    private Path place;

    @Test
    void whatWasToldToBeDoneIsThereAfterThePowerWasCut() throws Exception {
        Cuts cuts = new Cuts(place);
        List<String> wrong = new ArrayList<>();
        for (long step = 2; step <= cuts.steps() + 1; step += EVERY) {
            wrong.addAll(cuts.cut(step, step));
        }
        assertThat(cuts.steps()).isGreaterThan(500);
        assertThat(wrong).isEmpty();
    }
}
