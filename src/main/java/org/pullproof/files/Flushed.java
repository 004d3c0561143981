package org.pullproof.files;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Puts on the disk what the system still holds back, so that a power cut cannot take it. Bytes and names are flushed apart: {@code
 * fsync} of a file says nothing of the name it has in its folder (POSIX.1-2017, <i>fsync</i>; Linux man page fsync(2)).
 */
final class Flushed {
    private static final System.Logger LOG = System.getLogger(Flushed.class.getName());

    private Flushed() {}

    /** The bytes of a file. */
    static void file(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /** The names in a folder. A system that cannot open a folder (Windows) keeps its own order; what was done is seen already. */
    static void folder(@Nullable Path folder) {
        if (folder == null) {
            return;
        }
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException notSupported) {
            LOG.log(System.Logger.Level.DEBUG, "The folder was not flushed", notSupported);
        }
    }

    /** A folder and everything in it; not its own name. */
    static void tree(Path folder) throws IOException {
        List<Path> all;
        try (Stream<Path> tree = Files.walk(folder)) {
            all = tree.toList();
        }
        for (Path each : all) {
            if (Files.isDirectory(each)) {
                folder(each);
            } else {
                file(each);
            }
        }
    }

    /** Makes a folder and those above it that are not there, and flushes their names; one that is there stays as it is. */
    static void makeFolder(Path folder) throws IOException {
        List<Path> gaining = new ArrayList<>();
        for (Path each = folder.toAbsolutePath(); each != null && !Files.exists(each); each = each.getParent()) {
            if (each.getParent() != null) {
                gaining.add(each.getParent());
            }
        }
        Files.createDirectories(folder);
        gaining.forEach(Flushed::folder);
    }
}
