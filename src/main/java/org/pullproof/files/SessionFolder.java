package org.pullproof.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.pullproof.dyno.PullFile;
import org.pullproof.session.Problem;
import org.pullproof.session.Session;

/**
 * A session on disk: {@code session.json}, in {@code pulls/} the pull files exactly as they came, and in {@code kept/} documents of
 * earlier sittings.
 *
 * <p>Everything is written whole: after a kill the old document is there or the new one. Not safe for two writers at once: who
 * writes has a {@link SessionLock}.
 */
public final class SessionFolder {
    private static final String DOCUMENT = "session.json";
    private static final String PULLS = "pulls";
    private static final String KEPT = "kept";
    private static final String AS_IT_WAS =
            "the session on disk is as it was. Make room or get the right to write there, or save a copy elsewhere.";

    /** More than any session or pull of a real dyno day; a guard against the wrong file. */
    private static final int MOST_MEGABYTES = 200;

    private final Path folder;
    private final WholeFile writer;

    public SessionFolder(Path folder) {
        this(folder, new WholeFile());
    }

    /**
     * @param writer writes every file; a test hands in one that fails
     */
    public SessionFolder(Path folder, WholeFile writer) {
        this.folder = folder;
        this.writer = writer;
    }

    public Path path() {
        return folder;
    }

    /** Whether a session lies here. */
    public boolean holdsSession() {
        return Files.exists(document());
    }

    /**
     * Makes the folder, if it is not there.
     *
     * @throws BadFileException if it cannot be made
     */
    public void make() throws BadFileException {
        try {
            Files.createDirectories(folder);
        } catch (IOException failure) {
            throw new BadFileException(folder.toString(), "", Reason.of(failure) + "; name another folder.");
        }
    }

    private Path document() {
        return folder.resolve(DOCUMENT);
    }

    /**
     * Reads the document.
     *
     * @throws BadFileException naming file and place of everything that is wrong
     */
    public Session read() throws BadFileException {
        if (!holdsSession()) {
            throw new BadFileException(
                    folder.toString(),
                    "",
                    "here lies no session: name a folder with a session.json, or make one with \"pullproof new\".");
        }
        return read(document());
    }

    private static Session read(Path file) throws BadFileException {
        String name = file.toString();
        Session session = SessionJson.read(JsonPlace.parse(name, readBytes(file)));
        List<Problem> problems = new CrossReferences(name, session).problems();
        if (!problems.isEmpty()) {
            throw new BadFileException(problems);
        }
        return session;
    }

    /** Whether the document on disk says exactly what this session says; false too if it cannot be read. */
    public boolean says(Session session) {
        try {
            return Arrays.equals(readBytes(document()), text(session)) || read().equals(session);
        } catch (BadFileException unreadable) {
            return false;
        }
    }

    private static byte[] readBytes(Path file) throws BadFileException {
        return BoundedFile.read(file, MOST_MEGABYTES);
    }

    /**
     * Writes the document whole.
     *
     * @throws BadFileException if it could not be written; the document on disk is then as it was
     */
    public void write(Session session) throws BadFileException {
        try {
            writer.write(document(), text(session));
        } catch (IOException failure) {
            throw new BadFileException(document().toString(), "", Reason.of(failure) + "; " + AS_IT_WAS);
        }
    }

    private static byte[] text(Session session) {
        return JsonText.of(SessionJson.write(session, "Pullproof " + ProgramVersion.text()));
    }

    private KeptVersions kept() {
        return new KeptVersions(folder.resolve(KEPT), writer);
    }

    /**
     * The documents kept of this session, the newest first; at most ten.
     *
     * @throws BadFileException if they cannot be listed
     */
    public List<KeptVersion> versions() throws BadFileException {
        try {
            return kept().all();
        } catch (IOException failure) {
            throw new BadFileException(folder.resolve(KEPT).toString(), "", Reason.of(failure) + ".");
        }
    }

    /**
     * @throws BadFileException if the kept document is lost or unreadable
     */
    public Session read(KeptVersion version) throws BadFileException {
        return read(kept().file(version));
    }

    /**
     * Keeps the document on disk as it is now, and drops the oldest beyond ten.
     *
     * @throws BadFileException if it could not be kept
     */
    public void keepVersion(LocalDateTime time) throws BadFileException {
        try {
            kept().keep(readBytes(document()), time);
        } catch (BadFileException known) {
            throw known;
        } catch (IOException failure) {
            throw new BadFileException(folder.resolve(KEPT).toString(), "", Reason.of(failure) + "; " + AS_IT_WAS);
        }
    }

    /** Removes what a killed program left half written. Only for who has the {@link SessionLock}: a part may be another's work. */
    void removeParts() {
        List.of(folder, folder.resolve(PULLS), folder.resolve(KEPT)).forEach(WholeFile::removeParts);
    }

    /**
     * Keeps the bytes of a pull file exactly as they came. The same bytes under the same name are kept once; a name that is taken
     * by other bytes gets a number.
     *
     * @param originalName the name it came with; any path before it is dropped
     * @throws BadFileException if it could not be written
     */
    public PullFile keep(String originalName, byte[] bytes) throws BadFileException {
        Path pulls = folder.resolve(PULLS);
        String sha256 = Sha256.of(bytes);
        try {
            Files.createDirectories(pulls);
            String name = freeName(pulls, SafeName.of(originalName), sha256);
            if (!Files.exists(pulls.resolve(name))) {
                writer.write(pulls.resolve(name), bytes);
            }
            return new PullFile(originalName, name, sha256);
        } catch (BadFileException known) {
            throw known;
        } catch (IOException failure) {
            throw new BadFileException(pulls.toString(), "", Reason.of(failure) + "; the pull was not taken in.");
        }
    }

    private static String freeName(Path pulls, String wanted, String sha256) throws IOException {
        String name = wanted;
        for (int number = 2; ; number++) {
            Optional<Path> taken = sameName(pulls, name);
            if (taken.isEmpty()) {
                return name;
            }
            if (Sha256.of(readBytes(taken.get())).equals(sha256)) {
                return String.valueOf(taken.get().getFileName());
            }
            name = SafeName.numbered(wanted, number);
        }
    }

    // Case does not matter on some systems, and a session travels.
    private static Optional<Path> sameName(Path pulls, String name) throws IOException {
        try (Stream<Path> files = Files.list(pulls)) {
            return files.filter(file -> String.valueOf(file.getFileName())
                            .toLowerCase(Locale.ROOT)
                            .equals(name.toLowerCase(Locale.ROOT)))
                    .findFirst();
        }
    }

    /**
     * The bytes of a kept pull file.
     *
     * @throws BadFileException if the file is lost or is not the one that was taken in
     */
    public byte[] bytes(PullFile file) throws BadFileException {
        Path kept = folder.resolve(PULLS).resolve(file.kept());
        if (!SafeName.isSafe(file.kept()) || !Files.isRegularFile(kept)) {
            throw new BadFileException(
                    kept.toString(),
                    "",
                    "the kept pull file is lost; put the file back that came as " + file.original() + ".");
        }
        byte[] bytes = readBytes(kept);
        if (!Sha256.of(bytes).equals(file.sha256())) {
            throw new BadFileException(
                    kept.toString(),
                    "",
                    "the file is not the one that was taken in (its SHA-256 differs); put the original "
                            + file.original() + " back.");
        }
        return bytes;
    }
}
