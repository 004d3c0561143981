package org.pullproof.units;

/** The units a person reads figures in. */
public enum UnitSystem {
    US,
    METRIC
}
