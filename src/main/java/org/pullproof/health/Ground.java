package org.pullproof.health;

import java.util.Comparator;
import java.util.List;

/**
 * One ground for the verdict.
 *
 * @param weight how it bears on the verdict
 * @param clause a few words for the answer, without a full stop: "oil pressure at hot idle is 6 psi"
 * @param sentence the whole of it
 */
record Ground(Weight weight, String clause, String sentence) {

    /** From what settles the verdict to what it lacks; the order is the order of the reasons. */
    enum Weight {
        /** A plain failing reading. */
        FAILS,
        /** A reading that speaks against the engine, or against itself, without settling it. */
        DOUBTS,
        /** A reading that the verdict lacks. */
        LACKS,
        /** A reading that is told and already weighed. */
        TELLS,
        /** A reading that speaks for the engine. */
        SPEAKS_FOR
    }

    static Ground fails(String clause, String sentence) {
        return new Ground(Weight.FAILS, clause, sentence);
    }

    static Ground doubts(String clause, String sentence) {
        return new Ground(Weight.DOUBTS, clause, sentence);
    }

    /** This, told but without a weight of its own: the fault model has weighed it. */
    Ground told() {
        return new Ground(Weight.TELLS, "", sentence);
    }

    /** This as a doubt at most. */
    Ground asDoubt() {
        return new Ground(Weight.DOUBTS, clause, sentence);
    }

    static Ground speaksFor(String clause, String sentence) {
        return new Ground(Weight.SPEAKS_FOR, clause, sentence);
    }

    static Ground lacks(String clause) {
        return new Ground(Weight.LACKS, clause, Phrase.capital(clause) + ".");
    }

    static Ground speaksFor(String clause) {
        return new Ground(Weight.SPEAKS_FOR, clause, Phrase.capital(clause) + ".");
    }

    static List<Ground> strongestFirst(List<Ground> grounds) {
        return grounds.stream().sorted(Comparator.comparing(Ground::weight)).toList();
    }

    static boolean any(List<Ground> grounds, Weight weight) {
        return grounds.stream().anyMatch(ground -> ground.weight() == weight);
    }
}
