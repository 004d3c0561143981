package org.pullproof.ui.help;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.pullproof.advice.Stage;

/** The user guide that comes with the program, and behind it how each figure is made, a chapter a page of methods. Immutable. */
public final class Guide {
    private static final String GUIDE = "/org/pullproof/user-guide.md";
    private static final String METHODS = "/org/pullproof/methods/";
    private static final List<String> PAGES =
            List.of("health", "faults", "engine", "tune-up-and-money", "air", "dyno", "changes", "worth");

    private final List<GuideChapter> chapters;

    private Guide(List<GuideChapter> chapters) {
        this.chapters = List.copyOf(chapters);
    }

    /** The guide packed into the program. */
    public static Guide ofTheProgram() {
        List<GuideChapter> chapters = new ArrayList<>(GuideReader.read(packed(GUIDE)));
        PAGES.forEach(page -> chapters.add(method(page)));
        return new Guide(chapters);
    }

    private static GuideChapter method(String page) {
        return GuideChapter.ofAll(GuideReader.read(packed(METHODS + page + ".md")));
    }

    private static String packed(String name) {
        try (InputStream file = Objects.requireNonNull(Guide.class.getResourceAsStream(name), name)) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static Guide of(String markdown) {
        return new Guide(GuideReader.read(markdown));
    }

    /** The heading of the chapter that tells how the figures of a sheet are made. */
    public String methodOf(Stage stage) {
        return method(
                        switch (stage) {
                            case CAR -> "engine";
                            case HEALTH -> "health";
                            case TUNE_UP -> "tune-up-and-money";
                            case DYNO_DAY -> "dyno";
                            case CHANGES -> "changes";
                            case WORTH_IT -> "worth";
                        })
                .title();
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
