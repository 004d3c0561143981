package org.pullproof.weather;

import java.util.List;

/**
 * What measured power is multiplied by.
 *
 * @param standard whose factor it is
 * @param value the factor, about 1
 * @param parts what each reading leaves open of it
 * @param outside what lies outside the range the standard is made for, one sentence each; empty within it
 */
public record Factor(Standard standard, double value, List<AirPart.Width> parts, List<String> outside) {
    public Factor {
        parts = List.copyOf(parts);
        outside = List.copyOf(outside);
    }

    /** A factor that no reading enters: of figures corrected already, or not to be corrected. */
    public static Factor exactlyOne(Standard standard) {
        return new Factor(standard, 1, List.of(), List.of());
    }

    /** Half width that the readings leave: root of the sum of squares of the parts. */
    public double uncertainty() {
        return Math.sqrt(parts.stream()
                .mapToDouble(part -> part.halfWidth() * part.halfWidth())
                .sum());
    }

    /** Whether air and factor lie in the range the standard is made for. */
    public boolean withinRange() {
        return outside.isEmpty();
    }
}
