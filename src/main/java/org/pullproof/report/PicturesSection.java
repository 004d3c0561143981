package org.pullproof.report;

import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.pullproof.report.ReportModel.Section;
import org.pullproof.session.Picture;
import org.pullproof.session.Session;

/**
 * The photographs of a session.
 *
 * @param session whose
 * @param small makes a small JPEG of a picture; empty where its file is lost or was changed, no bytes
 *     where words are enough
 */
record PicturesSection(Session session, Function<Picture, Optional<byte[]>> small) {
    private static final int DIGITS = 12;

    /** Nothing where there is no picture. */
    Optional<Section> section() {
        if (session.pictures().isEmpty()) {
            return Optional.empty();
        }
        List<Block.Photo> photos = session.pictures().stream().map(this::photo).toList();
        return Optional.of(new Section(
                "pictures",
                "Photographs",
                "the files lie untouched in the session's folder pictures/",
                List.of(new Block.Photos("pictures", "What they show", photos))));
    }

    private static String source(byte[] jpeg) {
        return jpeg.length == 0
                ? ""
                : "data:image/jpeg;base64," + Base64.getEncoder().encodeToString(jpeg);
    }

    private Block.Photo photo(Picture picture) {
        String words = picture.about().words() + (picture.words().isEmpty() ? "" : ": " + picture.words()) + " ("
                + picture.kept() + ", " + Wording.minute(picture.time()) + ", SHA-256 "
                + picture.sha256().substring(0, DIGITS) + "…)";
        return small.apply(picture)
                .map(jpeg -> new Block.Photo(words, source(jpeg)))
                .orElseGet(() -> new Block.Photo(words + ": the file is lost or was changed", ""));
    }
}
