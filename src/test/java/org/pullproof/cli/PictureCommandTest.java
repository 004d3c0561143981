package org.pullproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.cli.CommandHarness.Outcome;

class PictureCommandTest {
    private final CommandHarness pullproof = new CommandHarness();

    @TempDir
    private Path folder;

    private Path session;
    private Path photograph;

    @BeforeEach
    void makeASession() throws IOException {
        session = folder.resolve("grey-coupe");
        photograph = folder.resolve("one.png");
        ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png", photograph.toFile());
        pullproof.run("new", session, "--profile", "v8-distributor-order-a", "--name", "Grey coupé");
    }

    @ParameterizedTest
    @CsvSource({
        "--cylinder, 3, cylinder 3",
        "--plug, 3, plug of cylinder 3",
        "--borescope, 3, borescope in cylinder 3",
        "--part, battery lead, battery lead"
    })
    void itSaysWhatThePictureShowsAndSoDoesTheReport(String option, String name, String words) {
        Outcome attached = pullproof.run("picture", session, option, name, photograph);

        assertThat(attached.out()).startsWith(words + ": one.png");
        assertThat(pullproof.run("report", session, "--parts", "pictures").out())
                .contains("Photographs", words + " (one.png");
        assertThat(pullproof.run("check", session).status()).isZero();
    }

    @Test
    void aSetupThatIsNotThereIsRefusedWithThoseThereAre() {
        Outcome refused = pullproof.run("picture", session, "--setup", "timing 99", photograph);

        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.err()).contains("There is no setup \"timing 99\"", "as found");
    }

    @Test
    void aCylinderTheEngineHasNotIsRefused() {
        assertThat(pullproof.run("picture", session, "--plug", "9", photograph).err())
                .contains("cylinders 1 to 8");
    }
}
