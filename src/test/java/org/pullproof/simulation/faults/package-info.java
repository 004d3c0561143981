/**
 * Invented engines with known faults, to try the fault model on. Written apart from it: own constants, and in part other physics
 * (ring leak partly viscous, a check valve that lags, a starter that slumps). It never asks the model for an answer.
 */
package org.pullproof.simulation.faults;
