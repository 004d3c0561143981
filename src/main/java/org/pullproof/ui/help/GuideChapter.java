package org.pullproof.ui.help;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A chapter of the guide.
 *
 * @param title its heading
 * @param blocks what stands in it, in order
 */
record GuideChapter(String title, List<GuideBlock> blocks) {
    GuideChapter {
        blocks = List.copyOf(blocks);
    }

    /** One chapter of a whole page: its title, and what were chapters under headings. */
    static GuideChapter ofAll(List<GuideChapter> page) {
        List<GuideBlock> blocks = new ArrayList<>(page.get(0).blocks());
        page.stream().skip(1).forEach(chapter -> {
            blocks.add(new GuideBlock.Heading(chapter.title()));
            blocks.addAll(chapter.blocks());
        });
        return new GuideChapter(page.get(0).title(), blocks);
    }

    /** Its own heading and those within it. */
    Stream<String> headings() {
        return Stream.concat(
                Stream.of(title),
                blocks.stream()
                        .filter(GuideBlock.Heading.class::isInstance)
                        .map(block -> ((GuideBlock.Heading) block).words()));
    }
}
