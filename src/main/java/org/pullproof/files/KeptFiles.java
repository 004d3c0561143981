package org.pullproof.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Files that came from elsewhere and are kept byte for byte in a folder of the session. The same bytes under the same name are kept
 * once; a name that is taken by other bytes gets a number.
 *
 * @param folder where they lie
 * @param writer writes them
 */
record KeptFiles(Path folder, WholeFile writer) {
    /** What was kept. */
    record Kept(String name, String sha256) {}

    /**
     * @param wanted a safe name
     * @throws IOException if it could not be written
     */
    Kept keep(String wanted, byte[] bytes) throws IOException {
        String sha256 = Sha256.of(bytes);
        Flushed.makeFolder(folder);
        String name = freeName(wanted, sha256);
        if (!Files.exists(folder.resolve(name))) {
            writer.write(folder.resolve(name), bytes);
        }
        return new Kept(name, sha256);
    }

    private String freeName(String wanted, String sha256) throws IOException {
        String name = wanted;
        for (int number = 2; ; number++) {
            Optional<Path> taken = sameName(name);
            if (taken.isEmpty()) {
                return name;
            }
            if (Sha256.of(SessionFolder.readBytes(taken.get())).equals(sha256)) {
                return String.valueOf(taken.get().getFileName());
            }
            name = SafeName.numbered(wanted, number);
        }
    }

    // Case does not matter on some systems, and a session travels.
    private Optional<Path> sameName(String name) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> String.valueOf(file.getFileName())
                            .toLowerCase(Locale.ROOT)
                            .equals(name.toLowerCase(Locale.ROOT)))
                    .findFirst();
        }
    }

    /**
     * The bytes of a kept file.
     *
     * @param what it is, for the message: "pull file"
     * @throws BadFileException if it is lost or is not the one that was taken in
     */
    byte[] bytes(String what, String name, String original, String sha256) throws BadFileException {
        Path kept = folder.resolve(name);
        if (!SafeName.isSafe(name) || !Files.isRegularFile(kept)) {
            throw new BadFileException(
                    kept.toString(),
                    "",
                    "the kept " + what + " is lost; put the file back that came as " + original + ".");
        }
        byte[] bytes = SessionFolder.readBytes(kept);
        if (!Sha256.of(bytes).equals(sha256)) {
            throw new BadFileException(
                    kept.toString(),
                    "",
                    "the file is not the one that was taken in (its SHA-256 differs); put the original " + original
                            + " back.");
        }
        return bytes;
    }
}
