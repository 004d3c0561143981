package org.pullproof.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import org.pullproof.dyno.PullFile;
import org.pullproof.session.About;
import org.pullproof.session.Picture;
import org.pullproof.session.Problem;
import org.pullproof.session.Session;

/**
 * A session on disk: {@code session.json}, in {@code pulls/} and {@code pictures/} the pull files and photographs exactly as they
 * came, and in {@code kept/} documents of earlier sittings.
 *
 * <p>Everything is written whole: after a kill the old document is there or the new one. Not safe for two writers at once: who
 * writes has a {@link SessionLock}.
 */
public final class SessionFolder {
    private static final String DOCUMENT = "session.json";
    private static final String PULLS = "pulls";
    private static final String PICTURES = "pictures";
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
            Flushed.makeFolder(folder);
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

    static byte[] readBytes(Path file) throws BadFileException {
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
            throw new NotWrittenException(document().toString(), Reason.of(failure) + "; " + AS_IT_WAS);
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
     * Keeps the document on disk as it is now, and drops what is beyond ten, as {@link KeptRoom} has it.
     *
     * @throws BadFileException if it could not be kept
     */
    public void keepVersion(LocalDateTime time) throws BadFileException {
        try {
            kept().keep(readBytes(document()), time);
        } catch (BadFileException known) {
            throw known;
        } catch (IOException failure) {
            throw new NotWrittenException(folder.resolve(KEPT).toString(), Reason.of(failure) + "; " + AS_IT_WAS);
        }
    }

    /** Removes what a killed program left half written. Only for who has the {@link SessionLock}: a part may be another's work. */
    void removeParts() {
        List.of(folder, folder.resolve(PULLS), folder.resolve(PICTURES), folder.resolve(KEPT))
                .forEach(WholeFile::removeParts);
    }

    /**
     * Keeps the bytes of a pull file exactly as they came. The same bytes under the same name are kept once; a name that is taken
     * by other bytes gets a number.
     *
     * @param originalName the name it came with; any path before it is dropped
     * @throws BadFileException if it could not be written
     */
    public PullFile keep(String originalName, byte[] bytes) throws BadFileException {
        KeptFiles.Kept kept = keep(pulls(), SafeName.of(originalName, "pull.csv"), bytes, "the pull was not taken in");
        return new PullFile(originalName, kept.name(), kept.sha256());
    }

    /**
     * Keeps a pull file too large to be held, as {@link #keep(String, byte[])} does.
     *
     * @throws BadFileException if it could not be written, or changed since it was met
     */
    public PullFile keep(LargeFile file) throws BadFileException {
        try {
            KeptFiles.Kept kept = pulls().keep(SafeName.of(file.name(), "pull.csv"), file.bytes(), file.sha256());
            return new PullFile(file.name(), kept.name(), kept.sha256());
        } catch (BadFileException known) {
            throw known;
        } catch (IOException failure) {
            throw new BadFileException(
                    folder.resolve(PULLS).toString(), "", Reason.of(failure) + "; the pull was not taken in.");
        }
    }

    private static KeptFiles.Kept keep(KeptFiles place, String name, byte[] bytes, String otherwise)
            throws BadFileException {
        try {
            return place.keep(name, bytes);
        } catch (BadFileException known) {
            throw known;
        } catch (IOException failure) {
            throw new NotWrittenException(
                    place.folder().toString(),
                    Reason.of(failure) + "; " + otherwise
                            + ". Make room or get the right to write there, then do it again.");
        }
    }

    private KeptFiles pulls() {
        return new KeptFiles(folder.resolve(PULLS), writer);
    }

    private KeptFiles pictures() {
        return new KeptFiles(folder.resolve(PICTURES), writer);
    }

    /**
     * The bytes of a kept pull file.
     *
     * @throws BadFileException if the file is lost or is not the one that was taken in
     */
    public FileBytes bytes(PullFile file) throws BadFileException {
        return pulls().large("pull file", file.kept(), file.original(), file.sha256());
    }

    /**
     * Keeps the bytes of a picture exactly as they came, as {@link #keep} does.
     *
     * @throws BadFileException if it is no picture that can be shown, or could not be written
     */
    public Picture keepPicture(About about, String words, String originalName, byte[] bytes, LocalDateTime time)
            throws BadFileException {
        Photograph.require(originalName, bytes);
        KeptFiles.Kept kept =
                keep(pictures(), SafeName.of(originalName, "picture.jpg"), bytes, "the picture was not attached");
        return new Picture(about, words, originalName, kept.name(), kept.sha256(), time);
    }

    /**
     * A kept picture.
     *
     * @throws BadFileException if the file is lost or is not the one that was attached
     */
    public Photograph photograph(Picture picture) throws BadFileException {
        return new Photograph(pictures().bytes("picture", picture.kept(), picture.original(), picture.sha256()));
    }
}
