package org.pullproof.ui.help;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.pullproof.advice.Stage;
import org.pullproof.ui.help.GuideRun.Style;

class GuideTest {
    private final Guide guide = Guide.ofTheProgram();

    @ParameterizedTest
    @EnumSource(Stage.class)
    void everySheetHasItsChapter(Stage stage) {
        GuideChapter chapter = guide.chapterWith(guide.headingOf(stage));

        assertThat(chapter.title()).isEqualTo(stage.words());
        assertThat(chapter.blocks()).isNotEmpty();
    }

    /** What the reader does not know of Markdown would be lost or stand there with its marks. */
    @Test
    void everyWordOfTheGuideIsReadAndNoMarkIsLeft() throws Exception {
        String written = Files.readString(Path.of("docs/user-guide.md"))
                .replaceAll("]\\([^)]*\\)", "")
                .replaceAll("```\\w*|(?m)^[|:\\s-]+$|\\\\(?=\\|)|(?m)^#+ |(?m)^\\||\\|$|[*`\\[]", "");
        long own = guide.chapters().stream()
                .takeWhile(chapter -> !chapter.title().equals(guide.methodOf(Stage.HEALTH)))
                .count();
        String shown = guide.chapters().stream()
                .limit(own)
                .flatMap(chapter -> Stream.concat(
                        Stream.of(chapter.title()), chapter.blocks().stream().map(GuideTest::words)))
                .reduce("", String::concat);

        assertThat(letters(shown)).isEqualTo(letters(written));
        assertThat(guide.chapters())
                .flatExtracting(GuideChapter::blocks)
                .filteredOn(block -> !(block instanceof GuideBlock.Code))
                .extracting(GuideTest::words)
                .noneMatch(words -> words.contains("**") || words.contains("]("));
    }

    /** Every page of methods but their list is a chapter, and no mark of its writing is left. */
    @Test
    void everyPageOfMethodsIsAChapter() throws Exception {
        try (Stream<Path> pages = Files.list(Path.of("docs/methods"))) {
            List<String> titles = pages.filter(page -> !page.endsWith("README.md"))
                    .map(GuideTest::firstLine)
                    .toList();
            assertThat(titles).hasSizeGreaterThan(7);
            assertThat(guide.chapters()).extracting(GuideChapter::title).containsAll(titles);
        }
    }

    private static String firstLine(Path page) {
        try {
            return Files.readAllLines(page).get(0).substring(2);
        } catch (java.io.IOException unreadable) {
            throw new java.io.UncheckedIOException(unreadable);
        }
    }

    @ParameterizedTest
    @EnumSource(Stage.class)
    void everySheetTellsHowItsFiguresAreMade(Stage stage) {
        assertThat(guide.chapterWith(guide.methodOf(stage)).title())
                .isEqualTo(guide.methodOf(stage))
                .isNotEqualTo(stage.words());
    }

    private static String letters(String text) {
        return text.replaceAll("[^\\p{L}\\p{N}]", "");
    }

    private static String words(GuideBlock block) {
        if (block instanceof GuideBlock.Heading heading) {
            return heading.words();
        }
        if (block instanceof GuideBlock.Code code) {
            return code.lines();
        }
        Stream<GuideRun> runs = block instanceof GuideBlock.Table table
                ? table.rows().stream().flatMap(List::stream).flatMap(List::stream)
                : block instanceof GuideBlock.Point point
                        ? point.runs().stream()
                        : ((GuideBlock.Paragraph) block).runs().stream();
        return runs.map(GuideRun::words).reduce("", String::concat);
    }

    /** CommonMark 0.31, 6.1, 6.2, 6.3: {@code `foo`} is code, {@code *foo bar*} emphasis, {@code **foo bar**} strong (from memory). */
    @Test
    void wordsAreSetAsTheirMarksSay() {
        assertThat(GuideRun.of("a *foo bar*, **foo bar**, `foo` and a [link](/uri)."))
                .containsExactly(
                        new GuideRun("a ", Style.PLAIN),
                        new GuideRun("foo bar", Style.ITALIC),
                        new GuideRun(", ", Style.PLAIN),
                        new GuideRun("foo bar", Style.BOLD),
                        new GuideRun(", ", Style.PLAIN),
                        new GuideRun("foo", Style.CODE),
                        new GuideRun(" and a ", Style.PLAIN),
                        new GuideRun("link", Style.PLAIN),
                        new GuideRun(".", Style.PLAIN));
    }

    /** GitHub Flavored Markdown 0.29, 4.10: the first example, and the one with an escaped bar in a cell (from memory). */
    @Test
    void tablesAndPointsAndCodeAreReadByLines() {
        List<GuideBlock> blocks = Guide.of(
                        "## T\n| foo | bar |\n| --- | --- |\n| baz \\| im | bim |\n\n- one\n  more\n- two\n\n```sh\na | b\n```\n")
                .chapterWith("T")
                .blocks();

        assertThat(blocks)
                .containsExactly(
                        new GuideBlock.Table(List.of(
                                List.of(GuideRun.of("foo"), GuideRun.of("bar")),
                                List.of(GuideRun.of("baz | im"), GuideRun.of("bim")))),
                        new GuideBlock.Point(GuideRun.of("one more")),
                        new GuideBlock.Point(GuideRun.of("two")),
                        new GuideBlock.Code("a | b"));
    }
}
