package org.pullproof.units;

/** What kind of thing a unit measures; two units of one dimension convert into each other. */
public enum Dimension {
    PRESSURE("a pressure"),
    TEMPERATURE("a temperature"),
    POWER("a power"),
    TORQUE("a torque"),
    LENGTH("a length"),
    ANGLE("an angle"),
    ROTATION("a speed of rotation"),
    SPEED("a speed"),
    VOLUME("a volume"),
    MASS("a mass"),
    INERTIA("a moment of inertia"),
    VOLTAGE("a voltage"),
    RESISTANCE("a resistance"),
    TIME("a time"),
    SHARE("a percentage"),
    MIXTURE("a mixture"),
    NUMBER("a number without unit");

    private final String words;

    Dimension(String words) {
        this.words = words;
    }

    /** The dimension with its article, for messages: "a pressure". */
    public String words() {
        return words;
    }
}
