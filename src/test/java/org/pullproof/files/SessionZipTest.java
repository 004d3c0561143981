package org.pullproof.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pullproof.session.Session;
import org.pullproof.testing.Tools;

class SessionZipTest {
    @TempDir
    private Path folder;

    private Path session;
    private Path zip;
    private Path parent;

    @BeforeEach
    void makeASession() throws Exception {
        session = folder.resolve("grey coupé");
        zip = folder.resolve("shared.zip");
        parent = folder.resolve("mine");
        SessionFolder place = new SessionFolder(session);
        place.make();
        place.write(Session.begin("Grey coupé", Tools.profile("v8-distributor-order-a")));
        place.keep("base.csv", "rpm,power\n2000,100\n".getBytes(StandardCharsets.UTF_8));
        Files.createDirectory(session.resolve("pictures"));
        Files.write(session.resolve("pictures/gauge.jpg"), new byte[] {(byte) 0xff, (byte) 0xd8});
        Files.writeString(session.resolve("stray.txt"), "mine alone");
    }

    private static List<String> everything(Path in) throws IOException {
        try (Stream<Path> tree = Files.walk(in)) {
            return tree.filter(Files::isRegularFile)
                    .map(file -> in.relativize(file).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }

    private void zipOf(String name, byte[] bytes) throws IOException {
        try (OutputStream file = Files.newOutputStream(zip);
                ZipOutputStream out = new ZipOutputStream(file)) {
            out.putNextEntry(new ZipEntry("car/session.json"));
            Files.copy(session.resolve("session.json"), out);
            out.putNextEntry(new ZipEntry(name));
            out.write(bytes);
        }
    }

    @Test
    void whatWasPackedIsUnpackedByteForByte() throws Exception {
        new SessionZip(zip).write(session);
        Path unpacked = new SessionZip(zip).unpack(parent);

        assertThat(unpacked).isEqualTo(parent.resolve("shared"));
        assertThat(everything(unpacked)).containsExactly("pictures/gauge.jpg", "pulls/base.csv", "session.json");
        assertThat(unpacked.resolve("session.json")).hasSameBinaryContentAs(session.resolve("session.json"));
        assertThat(unpacked.resolve("pulls/base.csv")).hasSameBinaryContentAs(session.resolve("pulls/base.csv"));
    }

    /** Read by the zip file system of the JDK, which is not the code that wrote it. */
    @Test
    void anotherReaderFindsTheSessionInAFolderOfItsName() throws Exception {
        new SessionZip(zip).write(session);
        try (FileSystem inside = FileSystems.newFileSystem(zip)) {
            assertThat(inside.getPath("grey coupé/session.json")).exists();
            assertThat(inside.getPath("grey coupé/pulls/base.csv")).exists();
            assertThat(inside.getPath("grey coupé/stray.txt")).doesNotExist();
        }
    }

    @Test
    void nothingThatLiesThereIsEverTouched() throws Exception {
        new SessionZip(zip).write(session);
        Path taken = Files.createDirectories(parent.resolve("shared"));
        Files.writeString(taken.resolve("session.json"), "mine");

        assertThat(new SessionZip(zip).unpack(parent)).isEqualTo(parent.resolve("shared-2"));
        assertThat(new SessionZip(zip).unpack(parent)).isEqualTo(parent.resolve("shared-3"));
        assertThat(taken.resolve("session.json")).hasContent("mine");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../evil.csv",
                "car/pulls/../../../evil.csv",
                "/evil.csv",
                "C:/evil.csv",
                "car\\..\\evil.csv",
                "car/.."
            })
    void aPathThatLeadsOutIsRefused(String name) throws Exception {
        zipOf(name, new byte[] {1});

        assertThatThrownBy(() -> new SessionZip(zip).unpack(parent))
                .isInstanceOf(BadFileException.class)
                .hasMessageContaining("leads out of the session's folder");
        assertThat(everything(folder)).noneMatch(file -> file.contains("evil"));
        assertThat(parent).isEmptyDirectory();
    }

    @Test
    void aFileThatSwellsIsRefusedAndNothingIsLeft() throws Exception {
        zipOf("car/pulls/bomb.csv", new byte[30 * 1024 * 1024]);
        assertThat(Files.size(zip)).isLessThan(100_000);

        assertThatThrownBy(() -> new SessionZip(zip).unpack(parent)).hasMessageContaining("swells");
        assertThat(parent).isEmptyDirectory();
    }

    @Test
    void tooManyFilesAreRefused() throws Exception {
        try (OutputStream file = Files.newOutputStream(zip);
                ZipOutputStream out = new ZipOutputStream(file)) {
            for (int i : IntStream.range(0, 5_001).toArray()) {
                out.putNextEntry(new ZipEntry("car/pulls/" + i + ".csv"));
            }
        }
        assertThatThrownBy(() -> new SessionZip(zip).unpack(parent)).hasMessageContaining("5001 files");
    }

    @Test
    void aZipWithoutASessionOrWithABrokenOneIsRefusedAndNothingIsLeft() throws Exception {
        Files.writeString(session.resolve("session.json"), "{");
        zipOf("car/pulls/a.csv", new byte[] {1});
        assertThatThrownBy(() -> new SessionZip(zip).unpack(parent)).hasMessageContaining("its session cannot be read");
        assertThat(parent).isEmptyDirectory();

        Files.writeString(zip, "no zip at all");
        assertThatThrownBy(() -> new SessionZip(zip).unpack(parent)).hasMessageContaining("no zip file");
    }
}
