package org.pullproof.ui.help;

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

    /** Its own heading and those within it. */
    Stream<String> headings() {
        return Stream.concat(
                Stream.of(title),
                blocks.stream()
                        .filter(GuideBlock.Heading.class::isInstance)
                        .map(block -> ((GuideBlock.Heading) block).words()));
    }
}
