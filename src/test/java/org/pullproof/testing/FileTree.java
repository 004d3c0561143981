package org.pullproof.testing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Whole folders in tests. */
public final class FileTree {
    private FileTree() {}

    /** Removes a folder and everything in it. */
    public static void delete(Path folder) throws IOException {
        List<Path> deepestFirst;
        try (Stream<Path> all = Files.walk(folder)) {
            deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path one : deepestFirst) {
            Files.delete(one);
        }
    }

    /** Copies a folder and everything in it to a place where nothing is yet. */
    public static void copy(Path from, Path to) throws IOException {
        List<Path> all;
        try (Stream<Path> tree = Files.walk(from)) {
            all = tree.toList();
        }
        for (Path one : all) {
            Files.copy(one, to.resolve(from.relativize(one).toString()));
        }
    }

    /** The names of the files in a folder, sorted; none if it is not there. */
    public static List<String> names(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(file -> String.valueOf(file.getFileName())).sorted().toList();
        }
    }
}
