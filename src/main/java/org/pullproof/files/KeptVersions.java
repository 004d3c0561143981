package org.pullproof.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Ten documents that were kept of a session, each byte for byte as it was, in {@code kept/}; {@link KeptRoom} says which ten. */
final class KeptVersions {
    static final int MOST = 10;

    private final Path folder;
    private final WholeFile writer;

    KeptVersions(Path folder, WholeFile writer) {
        this.folder = folder;
        this.writer = writer;
    }

    /** The newest first; files of other names are not looked at. */
    List<KeptVersion> all() throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.flatMap(file -> KeptVersion.named(String.valueOf(file.getFileName())).stream())
                    .sorted(Comparator.comparing(KeptVersion::number).reversed())
                    .toList();
        }
    }

    Path file(KeptVersion version) {
        return folder.resolve(version.name());
    }

    /** Keeps a document, unless the newest one kept is the same, and then drops what is beyond ten. */
    void keep(byte[] document, LocalDateTime time) throws IOException {
        List<KeptVersion> before = all();
        Optional<KeptVersion> newest = before.stream().findFirst();
        if (newest.isPresent() && Arrays.equals(Files.readAllBytes(file(newest.get())), document)) {
            return;
        }
        Flushed.makeFolder(folder);
        int number = newest.map(version -> version.number() + 1).orElse(1);
        writer.write(file(new KeptVersion(number, time)), document);
        List<KeptVersion> oldestFirst = new ArrayList<>(all());
        Collections.reverse(oldestFirst);
        for (KeptVersion version : new KeptRoom(MOST).tooMany(oldestFirst)) {
            Files.deleteIfExists(file(version));
        }
    }
}
