package org.pullproof.report;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import org.pullproof.drawing.Drawing;

/**
 * What the template of the page is filled with.
 *
 * @param report what it says
 * @param css its style
 * @param svg paints its drawings
 * @param paged whether the foot stands on every page, not once at the end
 */
public record Page(ReportModel report, String css, SvgPainter svg, boolean paged) {
    private static final String TEMPLATES = "org.pullproof.report.template";

    /** A drawing as an element; its words are escaped already. */
    public String paint(Drawing drawing) {
        return svg.paint(drawing);
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
