/**
 * A small simulated engine and dyno that invent the readings and pulls of the demo sessions. They have their own physics in a few
 * lines and never ask the program for a formula or an answer: what is planted here is the truth the program is held against.
 * Start with {@link org.pullproof.simulation.SimulatedEngine} and {@link org.pullproof.simulation.SimulatedDyno}.
 */
@NullMarked
package org.pullproof.simulation;

import org.jspecify.annotations.NullMarked;
