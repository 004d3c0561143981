package org.pullproof.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Makes a folder with all that is in it, or none: filled under another name beside it, flushed to the disk, then moved into its
 * place. A kill may leave the other name behind, never a folder half filled.
 */
public final class WholeFolder {
    /** Fills a new, empty folder. */
    @FunctionalInterface
    public interface Filling {
        void into(Path empty) throws IOException;
    }

    private WholeFolder() {}

    /**
     * @param target must not be there; the folder it lies in is made
     * @param prefix begins the other name, and tells who reads it what was going on: "unpacking-"
     * @throws IOException if anything fails, or something of that name is there; nothing is left behind then
     */
    public static void make(Path target, String prefix, Filling filling) throws IOException {
        Path parent = target.toAbsolutePath().getParent();
        if (parent == null) {
            throw new IOException(target + " is no folder that can be made");
        }
        Flushed.makeFolder(parent);
        Path half = Files.createTempDirectory(parent, prefix);
        try {
            // not the temporary folder itself: its mode 700 would stay on it after the move
            Path whole = Files.createDirectory(half.resolve("session"));
            filling.into(whole);
            Flushed.tree(whole);
            Files.move(whole, target);
            Flushed.folder(parent);
        } finally {
            delete(half);
        }
    }

    private static void delete(Path folder) throws IOException {
        List<Path> deepestFirst;
        try (Stream<Path> tree = Files.walk(folder)) {
            deepestFirst = tree.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path one : deepestFirst) {
            Files.delete(one);
        }
    }
}
