package org.pullproof.report;

/** A way to write a report as a file for people. */
public enum Format {
    TEXT,
    HTML,
    PDF
}
