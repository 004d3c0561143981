package org.pullproof.dyno;

import java.util.Arrays;
import java.util.Optional;

/** How the car stood on the dyno on one day; the key is its name on the command line and on disk. */
public enum DayFact {
    CALIBRATION("calibration", "Roll", "inertia known; coast-down without a car within 3 % of the last day"),
    STRAPS("straps", "Straps", "how many, where, marked; touched between pulls?"),
    GEAR("gear", "Gear", "the one nearest to 1:1"),
    LOCK_UP("lock-up", "Converter", "locked or not; – with a manual gearbox"),
    TYRES("tyres", "Tyres", "cold pressure, the same every day within 1 psi (7 kPa)"),
    FUEL("fuel", "Fuel", "grade, how fresh, at least half a tank"),
    FAN("fan", "Hood and fan", "open or shut; where the fan stands"),
    LOGGING("logging", "Logging", "rate of 20 Hz or more; smoothing and correction off at the source");

    private final String key;
    private final String words;
    private final String hint;

    DayFact(String key, String words, String hint) {
        this.key = key;
        this.words = words;
        this.hint = hint;
    }

    public String key() {
        return key;
    }

    public String words() {
        return words;
    }

    /** What should be told (common practice, no source). */
    public String hint() {
        return hint;
    }

    public static Optional<DayFact> named(String key) {
        return Arrays.stream(values()).filter(fact -> fact.key.equals(key)).findFirst();
    }
}
