package org.pullproof.worth.decision.tree;

/**
 * An option made ready for reckoning.
 *
 * @param root where it begins
 * @param picks how many picks it has
 */
public record Plan(Branch root, int picks) {}
