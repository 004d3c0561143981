package org.pullproof.drawing;

/** The named colours of the look (look tokens); a painter knows their values on paper and at night. */
public enum Ink {
    SHEET,
    DESK,
    WELL,
    INK,
    INK2,
    INK3,
    RULE2,
    RULE,
    GRID,
    BLUE,
    BLUEWASH,
    RED,
    REDWASH,
    ONFILL
}
