package org.pullproof.weather;

/** A reading that the air is made of. */
public enum AirPart {
    PRESSURE("pressure"),
    ELEVATION("elevation"),
    TEMPERATURE("temperature"),
    MOISTURE("moisture");

    private final String words;

    AirPart(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /**
     * What one reading leaves open of a figure.
     *
     * @param part which reading
     * @param halfWidth half the change of the figure from one end of the reading's step to the other, its own unit
     */
    public record Width(AirPart part, double halfWidth) {}
}
