package org.pullproof.app;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import org.pullproof.files.BadFileException;
import org.pullproof.files.IncomingFile;
import org.pullproof.files.SessionFolder;
import org.pullproof.session.About;
import org.pullproof.session.Edit;
import org.pullproof.session.Picture;

/**
 * Attaches photographs to whatever a session tells of: a part, a cylinder, a step, the car. The file is copied into the session
 * untouched; taking a picture away leaves its file, so that undo can bring it back.
 */
public final class AttachPicture {
    private final SessionDesk desk;

    public AttachPicture(SessionDesk desk) {
        this.desk = desk;
    }

    /**
     * @param words what is to be seen; may be empty
     * @throws BadFileException with a sentence if the file cannot be read, is no picture, or could not be kept
     */
    public OpenSession attach(OpenSession open, About about, String words, Path file, LocalDateTime when)
            throws BadFileException {
        IncomingFile incoming = IncomingFile.read(file);
        Picture picture =
                desk.keep(open, folder -> folder.keepPicture(about, words, incoming.name(), incoming.bytes(), when));
        return desk.edit(open, new Edit("Attach a picture: " + about.words(), session -> {
            List<Picture> pictures = new ArrayList<>(session.pictures());
            pictures.add(picture);
            return session.withPictures(pictures);
        }));
    }

    /** Takes a picture away; its file stays in the session's folder. */
    public OpenSession remove(OpenSession open, Picture picture) throws BadFileException {
        return desk.edit(
                open, new Edit("Take away a picture: " + picture.about().words(), session -> {
                    List<Picture> pictures = new ArrayList<>(session.pictures());
                    pictures.remove(picture);
                    return session.withPictures(pictures);
                }));
    }

    /**
     * A picture made small and upright.
     *
     * @param folder of the session
     * @param longest length of its longer side, px
     * @return the bytes of a JPEG file
     * @throws BadFileException if its file is lost or was changed
     */
    public byte[] thumbnail(Path folder, Picture picture, int longest) throws BadFileException {
        return new SessionFolder(folder).photograph(picture).thumbnail(longest);
    }
}
