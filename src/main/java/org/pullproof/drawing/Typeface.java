package org.pullproof.drawing;

/** The families of the look. */
public enum Typeface {
    /** IBM Plex Sans. */
    TEXT,
    /** IBM Plex Sans Condensed: figures, captions and everything on charts. */
    NARROW,
    /** Source Serif 4: questions, answers, titles. */
    VOICE
}
