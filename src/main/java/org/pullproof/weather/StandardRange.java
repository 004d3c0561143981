package org.pullproof.weather;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.pullproof.units.Figures;

/**
 * What of the air lies outside the range a standard is made for. Ranges: J1349 from memory (M); ISO 1585 temperature published
 * (EU 134/2014, P), limits of the factor from memory (M); the two others state none.
 *
 * @param standard whose range
 */
record StandardRange(Standard standard) {
    private static final String ADVICE = ": compare on the day, don't quote.";

    List<String> outside(AirState air, double factor) {
        double celsius = air.temperature().celsius();
        double dryKpa = air.dry().kilopascal();
        return switch (standard) {
            case SAE_J1349 ->
                told(
                        outside("temperature", celsius, 15, 35, 1, "°C"),
                        outside("dry pressure", dryKpa, 90, 105, 1, "kPa"));
            case ISO_1585 ->
                told(outside("temperature", celsius, 10, 45, 1, "°C"), outside("factor", factor, 0.93, 1.07, 4, ""));
            case SAE_J607, DIN_70020, NONE -> List.of();
        };
    }

    private static List<String> told(Optional<String> first, Optional<String> second) {
        return Stream.concat(first.stream(), second.stream()).toList();
    }

    private Optional<String> outside(String what, double value, double low, double high, int decimals, String unit) {
        if (value >= low && value <= high) {
            return Optional.empty();
        }
        String shown = Figures.number(value, decimals);
        String range =
                Figures.number(low, unit.isEmpty() ? 2 : 0) + " to " + Figures.number(high, unit.isEmpty() ? 2 : 0);
        return Optional.of(what + " " + shown + symbol(unit) + " " + (value < low ? "below" : "above")
                + " the range of " + standard.words() + ", " + range + symbol(unit) + ADVICE);
    }

    private static String symbol(String unit) {
        return unit.isEmpty() ? "" : Figures.NO_BREAK_SPACE + unit;
    }
}
