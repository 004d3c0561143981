package org.pullproof.worth.decision;

/** Told how far the work is. To stop it, throw {@link java.util.concurrent.CancellationException}. */
@FunctionalInterface
public interface Progress {
    /** Nobody watches. */
    Progress UNWATCHED = share -> {};

    /**
     * The work has come this far.
     *
     * @param share 0 to 1
     */
    void at(double share);
}
