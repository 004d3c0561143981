package org.pullproof.weather;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;

/**
 * The groups of a METAR report that tell the air: altimeter setting, temperature, dew point. Other groups are passed over; a
 * group that is absent or struck out by solidi is empty and never guessed.
 *
 * <p>Sources: FMH-1 (FCM-H1-1995) chapters 11 and 12; WMO No. 306, Manual on Codes, FM 15, sections 15.11 and 15.12.
 *
 * @param text the report as typed
 * @param altimeter altimeter setting (QNH) as printed, in inHg (A group) or hPa (Q group); both are rounded down
 * @param temperature of the air at the aerodrome; in tenths where the remarks tell it
 * @param dewPoint over water at every temperature; in tenths where the remarks tell it
 * @param seaLevelPressure from the remarks; it cannot be turned back into station pressure (FMH-1 11.4.4)
 */
public record Metar(
        String text,
        Optional<Quantity> altimeter,
        Optional<Quantity> temperature,
        Optional<Quantity> dewPoint,
        Optional<Quantity> seaLevelPressure) {
    private static final int LONGEST = 1000;
    private static final Pattern BODY = Pattern.compile("(M?\\d{2})/(M?\\d{2}|//|XX)?");
    private static final Pattern INCHES = Pattern.compile("A([23]\\d{3})");
    private static final Pattern HECTOPASCAL = Pattern.compile("Q([01]\\d{3})");
    private static final Pattern TENTHS = Pattern.compile("T([01])(\\d{3})(?:([01])(\\d{3}))?");
    private static final Pattern SEA_LEVEL = Pattern.compile("SLP(\\d{3})");
    private static final int LOWEST_NINE_HUNDRED = 500;

    /**
     * Reads a report of any shape: routine or special, corrected, automatic, with or without remarks.
     *
     * @throws IllegalArgumentException with a sentence if the text is longer than any report
     */
    public static Metar parse(String text) {
        if (text.length() > LONGEST) {
            throw new IllegalArgumentException(
                    "A METAR has at most " + LONGEST + " characters, this has " + text.length());
        }
        List<String> groups = Arrays.asList(text.strip().replace("=", " ").split("\\s+"));
        int remarks = groups.indexOf("RMK");
        List<String> body = remarks < 0 ? groups : groups.subList(0, remarks);
        List<String> after = remarks < 0 ? List.of() : groups.subList(remarks, groups.size());
        Optional<Matcher> tenths = first(after, TENTHS);
        Optional<Matcher> whole = first(body, BODY);
        return new Metar(
                text,
                setting(body),
                tenths.map(group -> tenth(group, 1)).or(() -> whole.map(group -> degrees(group.group(1)))),
                tenths.filter(group -> group.group(4) != null)
                        .map(group -> tenth(group, 3))
                        .or(() -> whole.flatMap(Metar::wholeDewPoint)),
                first(groups, SEA_LEVEL).map(Metar::seaLevel));
    }

    private static Optional<Matcher> first(List<String> groups, Pattern shape) {
        return groups.stream().map(shape::matcher).filter(Matcher::matches).findFirst();
    }

    private static Optional<Quantity> setting(List<String> body) {
        Optional<Quantity> inches = first(body, INCHES)
                .map(group -> Quantity.of(
                        group.group(1).substring(0, 2) + "." + group.group(1).substring(2), Unit.INHG));
        return inches.or(() -> first(body, HECTOPASCAL)
                .map(group -> Quantity.of(String.valueOf(Integer.parseInt(group.group(1))), Unit.HPA)));
    }

    private static Quantity degrees(String code) {
        return Quantity.of(code.replace('M', '-'), Unit.CELSIUS);
    }

    private static Optional<Quantity> wholeDewPoint(Matcher group) {
        return Optional.ofNullable(group.group(2))
                .filter(code -> Character.isDigit(code.charAt(code.length() - 1)))
                .map(Metar::degrees);
    }

    /** Sign digit (1: below zero) and three digits of tenths, beginning at that capture of the T group. */
    private static Quantity tenth(Matcher group, int capture) {
        String digits = group.group(capture + 1);
        String sign = group.group(capture).equals("1") ? "-" : "";
        return Quantity.of(sign + digits.substring(0, 2) + "." + digits.substring(2), Unit.CELSIUS);
    }

    /** The leading 9 or 10 is left out of the code and inferred: from 500 up it was 9 (from memory; the usual rule). */
    private static Quantity seaLevel(Matcher group) {
        String digits = group.group(1);
        String lead = Integer.parseInt(digits) >= LOWEST_NINE_HUNDRED ? "9" : "10";
        return Quantity.of(lead + digits.substring(0, 2) + "." + digits.substring(2), Unit.HPA);
    }

    /** What the report should tell and does not, in words. */
    public List<String> missing() {
        List<String> missing = new ArrayList<>();
        if (altimeter.isEmpty()) {
            missing.add("pressure (A or Q group)");
        }
        if (temperature.isEmpty()) {
            missing.add("temperature");
        }
        if (dewPoint.isEmpty()) {
            missing.add("dew point");
        }
        return List.copyOf(missing);
    }
}
