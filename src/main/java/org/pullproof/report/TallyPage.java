package org.pullproof.report;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import org.pullproof.drawing.Drawing;

/**
 * What the template of a tally sheet is filled with. Boxes are as high as one page lets them be.
 *
 * @param sheet what it says
 * @param css its style
 * @param svg paints its drawing
 * @param spare height of the paper beyond Letter, px
 */
public record TallyPage(TallySheet sheet, String css, SvgPainter svg, int spare) {
    private static final String TEMPLATES = "org.pullproof.report.template";

    /** Height that boxes share on Letter, the lower of the two papers, px. */
    private static final int ROOM = 470;

    private static final int HIGHEST = 64;
    private static final int STRIP = 80;
    private static final int LETTERS_A_LINE = 110;
    private static final int FREE_LINES = 8;
    private static final int LINE = 16;

    /** The blank as one HTML file that needs nothing beside it. */
    public static String html(TallySheet sheet) {
        Palette palette = Palette.paper();
        return new TallyPage(sheet, Stylesheet.screen(palette), new SvgPainter(palette), 0).xhtml();
    }

    /** The blank as the bytes of a PDF file. */
    public static byte[] pdf(TallySheet sheet, Paper paper) {
        Palette palette = Palette.print();
        return PdfReport.ofPage(
                new TallyPage(sheet, Stylesheet.card(palette, paper), new SvgPainter(palette), paper.higherThanLetter())
                        .xhtml());
    }

    /** A drawing as an element; its words are escaped already. */
    public String paint(Drawing drawing) {
        return svg.paint(drawing);
    }

    /** Height of a box, px. */
    public int boxHeight() {
        int room = ROOM + spare - (sheet.picture().isPresent() ? STRIP : 0) - noteRoom();
        return Math.min(HIGHEST, room / sheet.rows().size());
    }

    /** What notes take beyond the few lines that fit anyway. */
    private int noteRoom() {
        int lines = sheet.notes().stream()
                .mapToInt(note -> 1 + note.length() / LETTERS_A_LINE)
                .sum();
        return LINE * Math.max(0, lines - FREE_LINES);
    }

    /** Width of a column, percent. */
    public int width(TallySheet.Column column) {
        int whole = sheet.columns().stream().mapToInt(TallySheet.Column::share).sum();
        return 100 * column.share() / whole;
    }

    private String xhtml() {
        TemplateEngine engine =
                TemplateEngine.createPrecompiled(null, ContentType.Html, TallyPage.class.getClassLoader(), TEMPLATES);
        StringOutput out = new StringOutput();
        engine.render("tally.jte", this, out);
        return out.toString();
    }
}
