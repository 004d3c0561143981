package org.pullproof.app;

import java.util.List;
import org.pullproof.files.BadFileException;
import org.pullproof.files.KeptVersion;
import org.pullproof.files.SessionFolder;
import org.pullproof.session.Difference;
import org.pullproof.session.Edit;
import org.pullproof.session.Session;

/** Shows the documents kept of earlier sittings, and goes back to one. */
public final class KeptSittings {
    /**
     * A document kept.
     *
     * @param version which
     * @param difference in one line, what was done since; or why it cannot be read
     * @param isReadable whether it can be gone back to
     */
    public record Sitting(KeptVersion version, String difference, boolean isReadable) {}

    private final SessionDesk desk;

    public KeptSittings(SessionDesk desk) {
        this.desk = desk;
    }

    /**
     * The newest first.
     *
     * @throws BadFileException if they cannot be listed
     */
    public List<Sitting> all(OpenSession open) throws BadFileException {
        SessionFolder folder = new SessionFolder(open.folder());
        return folder.versions().stream()
                .map(version -> sitting(folder, version, open.session()))
                .toList();
    }

    private static Sitting sitting(SessionFolder folder, KeptVersion version, Session present) {
        try {
            return new Sitting(version, new Difference(folder.read(version), present).words(), true);
        } catch (BadFileException unreadable) {
            return new Sitting(version, unreadable.problems().get(0).message(), false);
        }
    }

    /**
     * Puts a kept document in the place of the present one, as an edit; the present one is kept too.
     *
     * @param name of the version, as listed
     * @throws BadFileException if there is none of that name, or it cannot be read or written
     */
    public OpenSession back(OpenSession open, String name) throws BadFileException {
        SessionFolder folder = new SessionFolder(open.folder());
        KeptVersion version = named(folder, name);
        Session then = folder.read(version);
        desk.keepPresent(open);
        return desk.edit(open, new Edit("Go back to " + version.when(), now -> then));
    }

    private static KeptVersion named(SessionFolder folder, String name) throws BadFileException {
        List<KeptVersion> all = folder.versions();
        return all.stream()
                .filter(version -> version.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new BadFileException(
                        folder.path().toString(),
                        "",
                        "no version \"" + name + "\" is kept; "
                                + (all.isEmpty()
                                        ? "none is: one is kept with the first edit of each sitting."
                                        : "there are "
                                                + String.join(
                                                        ", ",
                                                        all.stream()
                                                                .map(KeptVersion::name)
                                                                .toList())
                                                + ".")));
    }
}
