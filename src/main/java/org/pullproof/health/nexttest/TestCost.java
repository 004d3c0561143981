package org.pullproof.health.nexttest;

/**
 * What a test costs.
 *
 * @param minutes of one's own time
 * @param dollars for tool and material
 */
public record TestCost(int minutes, double dollars) {}
