package org.pullproof.dyno;

import java.util.Arrays;
import java.util.Optional;

/** How the car stood on the dyno on one day; the key is its name on the command line and on disk. */
public enum DayFact {
    CALIBRATION("calibration", "Roll", "inertia; empty coast-down as last day ± 3 %"),
    STRAPS("straps", "Straps", "how many, where, touched since?"),
    GEAR("gear", "Gear", "the one nearest to 1:1"),
    LOCK_UP("lock-up", "Converter", "locked or not; – with a manual gearbox"),
    TYRES("tyres", "Tyres", "cold pressure, as every day ± 1 psi (7 kPa)"),
    FUEL("fuel", "Fuel", "grade, how fresh, at least half a tank"),
    FAN("fan", "Hood and fan", "open or shut; where the fan stands"),
    LOGGING("logging", "Logging", "20 Hz or more; smoothing, correction off");

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
