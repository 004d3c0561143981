package org.pullproof.report;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.pullproof.report.RunCard.Line;

/**
 * What the template of a run card is filled with.
 *
 * @param card what it says
 * @param css its style
 */
public record RunCardPage(RunCard card, String css) {
    private static final String TEMPLATES = "org.pullproof.report.template";
    private static final int WIDTH = 80;
    private static final String INDENT = "        ";

    /** The card as one HTML file that needs nothing beside it. */
    public static String html(RunCard card) {
        return new RunCardPage(card, Stylesheet.screen(Palette.paper())).xhtml();
    }

    /** The card as the bytes of a PDF file. */
    public static byte[] pdf(RunCard card, Paper paper) {
        return PdfReport.ofPage(new RunCardPage(card, Stylesheet.numberedCard(Palette.print(), paper)).xhtml());
    }

    private String xhtml() {
        TemplateEngine engine =
                TemplateEngine.createPrecompiled(null, ContentType.Html, RunCardPage.class.getClassLoader(), TEMPLATES);
        StringOutput out = new StringOutput();
        engine.render("runcard.jte", this, out);
        return out.toString();
    }

    /** The card as plain text, lines of at most 80 characters. */
    public static String text(RunCard card) {
        List<String> lines = new ArrayList<>(Lines.wrapped("Run card: tune-up · " + card.title(), WIDTH));
        lines.add("=".repeat(WIDTH));
        card.told().forEach(sentence -> lines.addAll(Lines.wrapped(sentence, WIDTH)));
        card.steps().forEach(step -> lines.addAll(text(step)));
        lines.add("");
        lines.addAll(Lines.wrapped("! " + card.last(), WIDTH));
        return lines.stream().map(String::stripTrailing).collect(Collectors.joining("\n", "", "\n"));
    }

    private static List<String> text(Line step) {
        List<String> lines = new ArrayList<>(List.of(""));
        String head = (step.done() ? "[x] " : "[ ] ") + step.id() + "  ";
        List<String> title = Lines.wrapped(step.title() + ", " + step.minutes() + " min", WIDTH - INDENT.length());
        for (int i = 0; i < title.size(); i++) {
            lines.add(Lines.padded(i == 0 ? head : "", INDENT.length()) + title.get(i));
        }
        if (!step.off().isEmpty()) {
            lines.addAll(Lines.indented("off: " + ticks(step.off()), INDENT, WIDTH));
        }
        if (!step.back().isEmpty()) {
            lines.addAll(Lines.indented("back: " + ticks(step.back()), INDENT, WIDTH));
        }
        step.help().forEach(help -> lines.addAll(Lines.indented(help, INDENT, WIDTH)));
        step.cautions().forEach(caution -> lines.addAll(Lines.indented("! " + caution, INDENT, WIDTH)));
        return lines;
    }

    private static String ticks(List<String> parts) {
        return parts.stream().map(part -> "[ ]" + Lines.NO_BREAK_SPACE + part).collect(Collectors.joining("  "));
    }
}
