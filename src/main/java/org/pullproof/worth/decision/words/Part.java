package org.pullproof.worth.decision.words;

import org.pullproof.units.Sentence;

/**
 * A part of the paragraph.
 *
 * @param kind what it is about
 * @param sentence its one sentence
 */
public record Part(Kind kind, Sentence sentence) {

    /** What a part is about. */
    public enum Kind {
        /** A test that says whether the engine may be run at all. */
        GATE,
        /** What to do now. */
        ACT,
        /** Why. */
        WHY,
        /** What would have to be true for another option. */
        TURNS_ON,
        /** What to find out first. */
        FIND_OUT,
        /** What is in no figure. */
        NOT_COUNTED
    }
}
