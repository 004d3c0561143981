package org.pullproof.app;

/** Hears how far a long piece of work is, away from the screen, and may stop it. */
public interface Progress {
    /**
     * @param done pieces finished
     * @param of all pieces
     */
    void at(int done, int of);

    /** Whether the work should stop; it then leaves everything as it was. */
    default boolean stopped() {
        return false;
    }

    /** Nobody listens and nobody stops it. */
    static Progress unheard() {
        return (done, of) -> {};
    }
}
