package org.pullproof.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import org.pullproof.dyno.PullFile;
import org.pullproof.session.About;
import org.pullproof.session.Picture;
import org.pullproof.session.Problem;
import org.pullproof.session.Session;

/**
 * A session on disk: {@code session.json} and, in {@code pulls/} and {@code pictures/}, the pull files
 * and photographs exactly as they came.
 *
 * <p>Everything is written whole: after a kill the old document is there or the new one. Not safe for two writers at once.
 */
public final class SessionFolder {
    private static final String DOCUMENT = "session.json";
    private static final String PULLS = "pulls";
    private static final String PICTURES = "pictures";

    /** More than any session or pull of a real dyno day; a guard against the wrong file. */
    private static final long MOST_BYTES = 200L * 1024 * 1024;

    private final Path folder;
    private final WholeFile writer;

    public SessionFolder(Path folder) {
        this(folder, new WholeFile());
    }

    SessionFolder(Path folder, WholeFile writer) {
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
        String name = document().toString();
        Session session = SessionJson.read(JsonPlace.parse(name, readBytes(document())));
        List<Problem> problems = new CrossReferences(name, session).problems();
        if (!problems.isEmpty()) {
            throw new BadFileException(problems);
        }
        return session;
    }

    static byte[] readBytes(Path file) throws BadFileException {
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw new BadFileException(file.toString(), "", "the file is larger than 200 MB; is it the right one?");
            }
            return Files.readAllBytes(file);
        } catch (BadFileException tooLarge) {
            throw tooLarge;
        } catch (IOException failure) {
            throw new BadFileException(file.toString(), "", Reason.of(failure) + ".");
        }
    }

    /**
     * Writes the document whole.
     *
     * @throws BadFileException if it could not be written; the document on disk is then as it was
     */
    public void write(Session session) throws BadFileException {
        byte[] text = JsonText.of(SessionJson.write(session, "Pullproof " + ProgramVersion.text()));
        try {
            Files.createDirectories(folder);
            writer.write(document(), text);
        } catch (IOException failure) {
            throw new BadFileException(
                    document().toString(), "", Reason.of(failure) + "; the session on disk is as it was.");
        }
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

    private static KeptFiles.Kept keep(KeptFiles place, String name, byte[] bytes, String otherwise)
            throws BadFileException {
        try {
            return place.keep(name, bytes);
        } catch (BadFileException known) {
            throw known;
        } catch (IOException failure) {
            throw new BadFileException(place.folder().toString(), "", Reason.of(failure) + "; " + otherwise + ".");
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
    public byte[] bytes(PullFile file) throws BadFileException {
        return pulls().bytes("pull file", file.kept(), file.original(), file.sha256());
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
