package org.pullproof.ui.parts;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What people type the way the window writes figures. */
public final class Typed {
    private static final Pattern DOLLARS = Pattern.compile("\\s*\\$\\s*(\\d{1,3}(?:,?\\d{3})*(?:\\.\\d{1,2})?)\\s*");
    private static final Pattern THOUSANDS = Pattern.compile("\\s*([1-9]\\d{0,2}),(\\d{3})(?!\\d).*");

    private Typed() {}

    /** Returns {@code 6400USD} for {@code $6,400}, and any other text as it is. */
    public static String money(String text) {
        Matcher dollars = DOLLARS.matcher(text);
        return dollars.matches() ? dollars.group(1).replace(",", "") + "USD" : text;
    }

    /**
     * Returns the text of a quantity, unless its comma may part thousands as well as decimals.
     *
     * @throws IllegalArgumentException with both ways to write it
     */
    public static String unmistakable(String text) {
        Matcher thousands = THOUSANDS.matcher(text);
        if (thousands.matches()) {
            String whole = thousands.group(1);
            String rest = thousands.group(2);
            throw new IllegalArgumentException("\"" + text.strip() + "\" may be " + whole + rest + " or " + whole + "."
                    + rest + ": write it one of these ways.");
        }
        return text;
    }
}
