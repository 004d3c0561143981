package org.pullproof.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoShelfTest {
    @TempDir
    private Path folder;

    private Path demo;
    private DemoShelf shelf;

    @BeforeEach
    void aDemoWithOnePull() throws Exception {
        demo = folder.resolve("demos/grey-coupe");
        Files.createDirectories(demo.resolve("pulls"));
        Files.writeString(demo.resolve("session.json"), "{}");
        Files.writeString(demo.resolve("pulls/base-1.csv"), "rpm");
        shelf = new DemoShelf(folder.resolve("demos"), folder.resolve("mine"));
    }

    @Test
    void aCopyHoldsEveryFileOfTheDemo() throws Exception {
        Path copy = shelf.copy(demo);
        assertThat(copy).isEqualTo(folder.resolve("mine/grey-coupe"));
        assertThat(copy.resolve("pulls/base-1.csv")).hasContent("rpm");
        assertThat(copy.resolve("session.json")).hasContent("{}");
    }

    @Test
    void nothingButTheCopyIsLeftBehind() throws Exception {
        shelf.copy(demo);
        assertThat(folder.resolve("mine")).isDirectoryContaining("glob:**grey-coupe");
        assertThat(folder.resolve("mine")).isDirectoryNotContaining("glob:**copying-*");
    }

    @Test
    void workOnTheCopyIsKeptWhenTheDemoIsOpenedAgain() throws Exception {
        Path copy = shelf.copy(demo);
        Files.writeString(copy.resolve("session.json"), "{\"edited\": true}");
        assertThat(shelf.copy(demo)).isEqualTo(copy);
        assertThat(copy.resolve("session.json")).hasContent("{\"edited\": true}");
        assertThat(demo.resolve("session.json")).hasContent("{}");
    }

    @Test
    void aDemoIsKnownByWhereItLiesHoweverItsPathIsWritten() throws Exception {
        assertThat(shelf.holds(demo.resolve("../grey-coupe"))).isTrue();
        assertThat(shelf.holds(shelf.copy(demo))).isFalse();
    }

    @Test
    void allDemosAreFoldersThatHoldASession() throws Exception {
        Files.createDirectories(folder.resolve("demos/empty"));
        assertThat(shelf.all()).containsExactly(demo);
    }
}
