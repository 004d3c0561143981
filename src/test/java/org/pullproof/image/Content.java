package org.pullproof.image;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import org.pullproof.testing.FileTree;

/** What the image holds beside its Java: the jars, the system libraries of JavaFX, profiles and demo sessions. */
final class Content {
    /** The program's own jar. */
    static final String PROGRAM = "pullproof.jar";

    private final Path dist;
    private final Path to;

    Content(Path dist, Path to) {
        this.dist = dist;
        this.to = to;
    }

    void gather() throws IOException {
        FileTree.copy(dist.resolve("lib"), to);
        rename();
        for (Path jar : jars()) {
            unpackLibraries(jar);
        }
        FileTree.copy(dist.resolve("profiles"), to.resolve("profiles"));
        FileTree.copy(dist.resolve("demo-sessions"), to.resolve("demo-sessions"));
    }

    /** The image has one version, and a name without it stays the same from one to the next. */
    private void rename() throws IOException {
        for (Path jar : jars()) {
            if (jar.getFileName().toString().startsWith("pullproof-")) {
                Files.move(jar, to.resolve(PROGRAM));
            }
        }
    }

    private List<Path> jars() throws IOException {
        try (Stream<Path> all = Files.list(to)) {
            return all.filter(file -> file.toString().endsWith(".jar")).toList();
        }
    }

    /** JavaFX takes its libraries from beside its jar; from within it, it would first write them into the user's home. */
    private void unpackLibraries(Path jar) throws IOException {
        try (JarFile open = new JarFile(jar.toFile())) {
            for (ZipEntry entry : open.stream().filter(Content::isLibrary).toList()) {
                try (InputStream library = open.getInputStream(entry)) {
                    Files.copy(library, to.resolve(entry.getName()));
                }
            }
        }
    }

    private static boolean isLibrary(ZipEntry entry) {
        return entry.getName().matches("[^/]+\\.(so|dll|dylib)");
    }
}
