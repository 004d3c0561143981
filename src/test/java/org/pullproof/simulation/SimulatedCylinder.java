package org.pullproof.simulation;

/**
 * One cylinder with one hole.
 *
 * @param leakMm2 area the air escapes through, mm²
 * @param oilSeals how much of that area a spoon of oil closes, 0 to 1: nearly all at rings, nothing at a valve
 * @param fires part of the mixture that burns, 0 to 1
 * @param air where the air is heard, as a readings table says it
 */
record SimulatedCylinder(double leakMm2, double oilSeals, double fires, String air) {
    static SimulatedCylinder sound(double leakMm2) {
        return new SimulatedCylinder(leakMm2, 0.6, 1, "none");
    }

    static SimulatedCylinder wornRings(double leakMm2) {
        return new SimulatedCylinder(leakMm2, 0.85, 1, "crankcase");
    }

    static SimulatedCylinder leakingExhaustValve(double leakMm2) {
        return new SimulatedCylinder(leakMm2, 0.05, 1, "exhaust");
    }

    SimulatedCylinder oiled() {
        return new SimulatedCylinder(leakMm2 * (1 - oilSeals), oilSeals, fires, air);
    }
}
