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
    /** A file this small is read once and held while it is gone through. */
    private static final int HELD_BYTES = 8 << 20;

    /** What was kept. */
    record Kept(String name, String sha256) {}

    /**
     * @param wanted a safe name
     * @throws IOException if it could not be written
     */
    Kept keep(String wanted, byte[] bytes) throws IOException {
        return keep(wanted, FileBytes.of(bytes), Sha256.of(bytes));
    }

    /**
     * The same for bytes that are never all held.
     *
     * @param sha256 their digest when they were read
     * @throws IOException if they could not be written, or are others by now
     */
    Kept keep(String wanted, FileBytes bytes, String sha256) throws IOException {
        Flushed.makeFolder(folder);
        String name = freeName(wanted, sha256);
        Path kept = folder.resolve(name);
        if (!Files.exists(kept)) {
            writer.write(kept, bytes);
            requireSame(kept, sha256);
        }
        return new Kept(name, sha256);
    }

    private static void requireSame(Path kept, String sha256) throws IOException {
        if (!Sha256.of(FileBytes.of(kept)).equals(sha256)) {
            Files.delete(kept);
            throw new IOException("the file changed while it was read; take it in again once it is whole");
        }
    }

    private String freeName(String wanted, String sha256) throws IOException {
        String name = wanted;
        for (int number = 2; ; number++) {
            Optional<Path> taken = sameName(name);
            if (taken.isEmpty()) {
                return name;
            }
            if (Sha256.of(FileBytes.of(taken.get())).equals(sha256)) {
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
        byte[] bytes = SessionFolder.readBytes(there(what, name, original));
        if (!Sha256.of(bytes).equals(sha256)) {
            throw another(folder.resolve(name), original);
        }
        return bytes;
    }

    /**
     * The same for a file that may be too large to be held.
     *
     * @param what it is, for the message: "pull file"
     * @throws BadFileException if it is lost or is not the one that was taken in
     */
    FileBytes large(String what, String name, String original, String sha256) throws BadFileException {
        Path kept = there(what, name, original);
        try {
            FileBytes bytes =
                    Files.size(kept) <= HELD_BYTES ? FileBytes.of(Files.readAllBytes(kept)) : FileBytes.of(kept);
            if (!Sha256.of(bytes).equals(sha256)) {
                throw another(kept, original);
            }
            return bytes;
        } catch (BadFileException known) {
            throw known;
        } catch (IOException failure) {
            throw new BadFileException(kept.toString(), "", Reason.of(failure) + ".");
        }
    }

    private Path there(String what, String name, String original) throws BadFileException {
        Path kept = folder.resolve(name);
        if (!SafeName.isSafe(name) || !Files.isRegularFile(kept)) {
            throw new BadFileException(
                    kept.toString(),
                    "",
                    "the kept " + what + " is lost; put the file back that came as " + original + ".");
        }
        return kept;
    }

    private static BadFileException another(Path kept, String original) {
        return new BadFileException(
                kept.toString(),
                "",
                "the file is not the one that was taken in (its SHA-256 differs); put the original " + original
                        + " back.");
    }
}
