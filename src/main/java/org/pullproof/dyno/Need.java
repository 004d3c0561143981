package org.pullproof.dyno;

/** What a table must have to be of use. */
enum Need {
    /** Engine speed, and power or torque. */
    POWER,
    /** Engine speed, and power, torque or the roll's speed against time. */
    POWER_OR_ROLL,
    /** The roll's speed against time; engine speed where it is there. */
    ROLL
}
