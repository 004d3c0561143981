package org.pullproof.files;

import java.time.LocalDateTime;
import java.util.Map;
import org.pullproof.session.About;
import org.pullproof.session.Picture;

/** A photograph of a session; its file lies in {@code pictures/}. */
final class PictureJson {
    private PictureJson() {}

    static Picture read(JsonPlace place) throws BadFileException {
        place.onlyKeys("of", "name", "words", "original", "kept", "sha256", "time");
        About.Kind kind = place.at("of").oneOf(About.Kind.class);
        String name = place.maybe("name", JsonPlace::text).orElse("");
        String words = place.maybe("words", JsonPlace::text).orElse("");
        String original = place.at("original").text();
        String kept = place.at("kept").text();
        String sha256 = place.at("sha256").text();
        LocalDateTime time = place.at("time").time();
        return place.checked(() -> new Picture(new About(kind, name), words, original, kept, sha256, time));
    }

    static Map<String, Object> write(Picture picture) {
        return new JsonObject()
                .key("of", picture.about().kind())
                .unlessEmpty("name", picture.about().name())
                .unlessEmpty("words", picture.words())
                .put("original", picture.original())
                .put("kept", picture.kept())
                .put("sha256", picture.sha256())
                .text("time", picture.time())
                .entries();
    }
}
