package org.pullproof.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.pullproof.drawing.Ink;

/** The style of a report: typefaces, the look with its inks put in, and the sheet of paper. */
final class Stylesheet {
    /** Where the files of the typefaces lie among the resources. */
    static final String FONTS = "/org/pullproof/fonts/";

    /** A typeface of the look in one weight. */
    record Font(String family, int weight, String file) {}

    private static final List<Font> USED = List.of(
            new Font("Source Serif 4", 400, "SourceSerif4-Regular.ttf"),
            new Font("Source Serif 4", 600, "SourceSerif4-SemiBold.ttf"),
            new Font("IBM Plex Sans", 400, "IBMPlexSans-Regular.ttf"),
            new Font("IBM Plex Sans", 500, "IBMPlexSans-Medium.ttf"),
            new Font("IBM Plex Sans", 600, "IBMPlexSans-SemiBold.ttf"),
            new Font("IBM Plex Sans Condensed", 400, "IBMPlexSansCondensed-Regular.ttf"),
            new Font("IBM Plex Sans Condensed", 500, "IBMPlexSansCondensed-Medium.ttf"),
            new Font("IBM Plex Sans Condensed", 600, "IBMPlexSansCondensed-SemiBold.ttf"));

    private Stylesheet() {}

    static List<Font> fonts() {
        return USED;
    }

    /** For one file that is read on a screen: the typefaces are part of it. */
    static String screen(Palette palette) {
        return faces(
                        USED,
                        font -> "data:font/ttf;base64,"
                                + Base64.getEncoder().encodeToString(bytes(FONTS + font.file())))
                + look(palette)
                + "body{max-width:" + (int) Paper.CONTENT_WIDTH + "px;margin:32px auto}"
                + inked("/org/pullproof/report/screen.css", palette);
    }

    /** For a report on paper, with room for its foot. */
    static String paper(Palette palette, Paper paper) {
        return onPaper(palette, paper, 84, "@bottom-center{content:element(foot)}");
    }

    /** For a card on paper: it has no foot and may be written on down to the margin. */
    static String card(Palette palette, Paper paper) {
        return onPaper(palette, paper, 44, "");
    }

    /** For a card of several sheets: they get lost less when each says which it is. */
    static String numberedCard(Palette palette, Paper paper) {
        return onPaper(
                palette,
                paper,
                44,
                "@bottom-right{font-family:'IBM Plex Sans Condensed';font-size:11px;content:counter(page) ' of ' counter(pages)}");
    }

    /** The typefaces are named by their files. */
    private static String onPaper(Palette palette, Paper paper, int bottom, String foot) {
        return faces(USED, Font::file)
                + faces(ownFamilies(), Font::file)
                + look(palette)
                + String.format(
                        Locale.ROOT,
                        "@page{size:%s;margin:44px %.0fpx %dpx;%s}",
                        paper.css(),
                        paper.sideMargin(),
                        bottom,
                        foot);
    }

    /** In drawings the PDF writer finds a heavier weight only under a family of its own. */
    private static List<Font> ownFamilies() {
        return USED.stream()
                .filter(font -> font.weight() > 400)
                .map(font ->
                        new Font(font.family() + (font.weight() == 500 ? " Medium" : " SemiBold"), 400, font.file()))
                .toList();
    }

    private static String faces(List<Font> fonts, Function<Font, String> source) {
        return fonts.stream()
                .map(font -> "@font-face{font-family:'" + font.family() + "';font-weight:" + font.weight() + ";src:url("
                        + source.apply(font) + ")}\n")
                .collect(Collectors.joining());
    }

    /** The look; {@code $ink} stands for the colour of that ink. */
    private static String look(Palette palette) {
        return inked("/org/pullproof/report/report.css", palette);
    }

    private static String inked(String resource, Palette palette) {
        String css = new String(bytes(resource), StandardCharsets.UTF_8);
        for (Ink ink : Ink.values()) {
            css = css.replace("$" + ink.name().toLowerCase(Locale.ROOT) + ";", palette.of(ink) + ";");
        }
        return css;
    }

    static byte[] bytes(String resource) {
        try (InputStream in = open(resource)) {
            return in.readAllBytes();
        } catch (IOException broken) {
            throw new UncheckedIOException(resource + " cannot be read", broken);
        }
    }

    static InputStream open(String resource) {
        return Objects.requireNonNull(Stylesheet.class.getResourceAsStream(resource), resource);
    }
}
