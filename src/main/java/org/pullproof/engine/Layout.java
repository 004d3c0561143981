package org.pullproof.engine;

/** How the banks of an engine stand. */
public enum Layout {
    INLINE,
    V,
    FLAT
}
