package org.pullproof.changes;

import java.util.Optional;

/**
 * What the sentence of one call is made from.
 *
 * @param pair the two setups
 * @param fits what was fitted
 * @param estimate the difference
 * @param call what may be said
 * @param holds whether it holds for all changes tried
 * @param steps how many recorded changes were tried
 * @param beforeKw mean of the older setup, kW
 * @param settling what would settle it
 * @param curve the difference over engine speed
 */
record Said(
        Comparison pair,
        Fits fits,
        Estimate estimate,
        Call call,
        boolean holds,
        int steps,
        double beforeKw,
        Settling settling,
        Optional<CurveBand> curve) {}
