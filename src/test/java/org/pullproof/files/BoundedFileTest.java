package org.pullproof.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class BoundedFileTest {
    @TempDir
    private Path folder;

    @Test
    void aFileUpToTheBoundIsReadWhole() throws Exception {
        Path file = Files.write(folder.resolve("right"), new byte[1024 * 1024]);
        assertThat(BoundedFile.read(file, 1)).hasSize(1024 * 1024);
    }

    /** A gigabyte that takes no place on the disk. */
    @Test
    void aLargerOneIsRefusedWithoutBeingRead() throws Exception {
        Path file = folder.resolve("large");
        try (RandomAccessFile large = new RandomAccessFile(file.toFile(), "rw")) {
            large.setLength(1L << 30);
        }
        assertThatThrownBy(() -> BoundedFile.read(file, 1))
                .hasMessageEndingWith("the file is larger than 1 MB; is it the right one?");
    }

    @Test
    void aPullFileLargerThanASessionHoldsIsRefusedWithoutBeingRead() throws Exception {
        Path file = folder.resolve("large.csv");
        try (RandomAccessFile large = new RandomAccessFile(file.toFile(), "rw")) {
            large.setLength((200L << 20) + 1);
        }
        assertThatThrownBy(() -> LargeFile.at(file))
                .hasMessageEndingWith("large.csv: the file is larger than 200 MB; is it the right one?");
    }

    @Test
    void aFolderIsNoFile() {
        assertThatThrownBy(() -> BoundedFile.read(folder, 1)).hasMessageContaining("this is no plain file");
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void aDeviceWithoutEndIsNotRead() {
        assertThatThrownBy(() -> BoundedFile.read(Path.of("/dev/zero"), 1))
                .hasMessageContaining("this is no plain file");
    }

    @Test
    void oneThatIsNotThereIsSaidNotToBe() {
        assertThatThrownBy(() -> BoundedFile.read(folder.resolve("none"), 1))
                .hasMessageEndingWith("there is no such file or folder.");
    }
}
