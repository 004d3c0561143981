package org.pullproof.engine;

/** A fact that may not be known of an engine. */
public enum Known {
    YES,
    NO,
    NOT_KNOWN
}
