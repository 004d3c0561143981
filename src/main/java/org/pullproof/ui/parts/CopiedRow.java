package org.pullproof.ui.parts;

import java.util.Arrays;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.pullproof.units.Inert;

/** A row of cells for the clipboard, as a spreadsheet takes it: words stay words there, whatever they begin with. */
public final class CopiedRow {
    private static final Pattern FORMULA = Pattern.compile("^[=+\\-@\\uFF1D\\uFF0B\\uFF0D\\uFF20].*");
    private static final Pattern FIGURE = Pattern.compile("[+\\-]\\d+([.,]\\d+)?([ \\u00a0][%\\p{L}]{1,8})?");

    private CopiedRow() {}

    /** The cells with tabs between them. */
    public static String of(String... cells) {
        return Arrays.stream(cells).map(CopiedRow::cell).collect(Collectors.joining("\t"));
    }

    // A leading apostrophe tells a spreadsheet that words follow (common practice, no source).
    private static String cell(String text) {
        String words = Inert.words(text);
        return FORMULA.matcher(words).matches() && !FIGURE.matcher(words).matches() ? "'" + words : words;
    }
}
