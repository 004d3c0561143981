package org.pullproof.engine;

/** Which way the rotor of the distributor turns, seen from above the cap. */
public enum Rotor {
    CLOCKWISE,
    COUNTERCLOCKWISE,
    NONE
}
