package org.pullproof.report;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.pullproof.drawing.Drawing;
import org.pullproof.report.ReportModel.Item;

/**
 * What the template of the page is filled with.
 *
 * @param report what it says
 * @param css its style
 * @param svg paints its drawings
 * @param paged whether the foot stands on every page, not once at the end
 */
public record Page(ReportModel report, String css, SvgPainter svg, boolean paged) {
    /** From so many on, named values stand in two columns. */
    private static final int MANY = 7;

    private static final String TEMPLATES = "org.pullproof.report.template";

    /** A drawing as an element; its words are escaped already. */
    public String paint(Drawing drawing) {
        return svg.paint(drawing);
    }

    /** Named values in lines: a few one below the other, many in two columns, read down the left one first. */
    public static List<List<Item>> sideBySide(List<Item> items) {
        if (items.size() < MANY) {
            return items.stream().map(List::of).toList();
        }
        int half = (items.size() + 1) / 2;
        return IntStream.range(0, half)
                .mapToObj(i -> Stream.of(i, i + half)
                        .filter(place -> place < items.size())
                        .map(items::get)
                        .toList())
                .toList();
    }

    /** The page as well-formed XHTML. */
    String xhtml() {
        TemplateEngine engine =
                TemplateEngine.createPrecompiled(null, ContentType.Html, Page.class.getClassLoader(), TEMPLATES);
        StringOutput out = new StringOutput();
        engine.render("report.jte", this, out);
        return out.toString();
    }
}
