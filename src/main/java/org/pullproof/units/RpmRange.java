package org.pullproof.units;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A range of engine speeds, such as the band a car works in.
 *
 * @param fromRpm lower end, rpm
 * @param toRpm upper end, rpm, at least 500 above the lower
 */
public record RpmRange(int fromRpm, int toRpm) {
    private static final int NARROWEST = 500;
    private static final Pattern SHAPE = Pattern.compile("\\s*(\\d{3,5})\\s*[-\u2013]\\s*(\\d{3,5})\\s*rpm\\s*");

    public RpmRange {
        if (!possible(fromRpm, toRpm)) {
            throw new IllegalArgumentException("A band lies between 500 and 20000 rpm and is at least " + NARROWEST
                    + " rpm wide, was " + fromRpm + " to " + toRpm);
        }
    }

    /** Whether these could be the ends of a band. */
    public static boolean possible(int fromRpm, int toRpm) {
        return fromRpm >= 500 && toRpm <= 20000 && toRpm - fromRpm >= NARROWEST;
    }

    /**
     * Reads {@code 2600-5000rpm}.
     *
     * @throws IllegalArgumentException if the text has another shape
     */
    public static RpmRange parse(String text) {
        Matcher shape = SHAPE.matcher(text);
        if (!shape.matches()) {
            throw new IllegalArgumentException("\"" + text + "\" is not a band: write 2600-5000rpm");
        }
        return new RpmRange(Integer.parseInt(shape.group(1)), Integer.parseInt(shape.group(2)));
    }

    @Override
    public String toString() {
        return fromRpm + "-" + toRpm + "rpm";
    }
}
