package org.pullproof.report;

/** Writes a report as one HTML file that needs nothing beside it, also well-formed as XML. */
public final class HtmlReport {
    public String write(ReportModel report) {
        Palette palette = Palette.paper();
        return new Page(report, Stylesheet.screen(palette), new SvgPainter(palette), false).xhtml();
    }
}
