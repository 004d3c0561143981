package org.pullproof.report;

import org.pullproof.units.Inert;

/** Words from outside as a page may hold them. */
final class Markup {
    private Markup() {}

    /** Words to stand between the tags, or in a quoted attribute, of a page. */
    static String escaped(String text) {
        return Inert.words(text)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }
}
