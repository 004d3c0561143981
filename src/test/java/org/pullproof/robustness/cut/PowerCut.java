package org.pullproof.robustness.cut;

/** The power is gone: no more of the program runs. An error, so that nothing takes it for a disk that can be worked around. */
public final class PowerCut extends Error {
    private static final long serialVersionUID = 1;

    PowerCut(long step) {
        super("The power was cut before step " + step);
    }
}
