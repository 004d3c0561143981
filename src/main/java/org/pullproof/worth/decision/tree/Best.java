package org.pullproof.worth.decision.tree;

import java.util.BitSet;

/**
 * The best option under some weights.
 *
 * @param option its place in the list
 * @param value Σ w·U; weights need not add up to 1
 * @param allowed the options that were within the budget or open
 */
public record Best(int option, double value, BitSet allowed) {}
