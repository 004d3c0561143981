package org.pullproof.ui.help;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.pullproof.advice.Stage;

/** The user guide that comes with the program. Immutable. */
public final class Guide {
    private static final String GUIDE = "/org/pullproof/user-guide.md";

    private final List<GuideChapter> chapters;

    private Guide(List<GuideChapter> chapters) {
        this.chapters = List.copyOf(chapters);
    }

    /** The guide packed into the program. */
    public static Guide ofTheProgram() {
        try (InputStream guide = Objects.requireNonNull(Guide.class.getResourceAsStream(GUIDE), GUIDE)) {
            return of(new String(guide.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static Guide of(String markdown) {
        return new Guide(GuideReader.read(markdown));
    }

    List<GuideChapter> chapters() {
        return chapters;
    }

    /** The heading of the chapter about a sheet: chapters are named as the sheets are. */
    public String headingOf(Stage stage) {
        return stage.words();
    }

    /** Every heading in order. */
    public List<String> headings() {
        return chapters.stream().flatMap(GuideChapter::headings).toList();
    }

    /** The chapter in which a heading stands; the first where there is none of that name. */
    GuideChapter chapterWith(String heading) {
        return chapters.stream()
                .filter(chapter -> chapter.headings().anyMatch(heading::equals))
                .findFirst()
                .orElse(chapters.get(0));
    }
}
