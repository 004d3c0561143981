package org.pullproof.files;

import java.util.Locale;
import java.util.regex.Pattern;

/** Turns the name a file came with into one that is a plain file name on every system. */
final class SafeName {
    private static final int LONGEST = 100;
    private static final Pattern SAFE = Pattern.compile("[\\p{L}\\p{N}_][\\p{L}\\p{N}_. -]{0,119}");
    private static final Pattern DEVICE = Pattern.compile("(con|prn|aux|nul|com\\d|lpt\\d)(\\..*)?");

    private SafeName() {}

    /** Whether a name written in a session may be used as it is: one part, nothing that climbs. */
    static boolean isSafe(String name) {
        return SAFE.matcher(name).matches() && !isDevice(name) && !name.endsWith(".") && !name.endsWith(" ");
    }

    private static boolean isDevice(String name) {
        return DEVICE.matcher(name.toLowerCase(Locale.ROOT)).matches();
    }

    /**
     * The last part of the name, with every odd sign replaced by {@code _}.
     *
     * @param otherwise the name where nothing is left of it
     */
    static String of(String original, String otherwise) {
        String last = original.substring(Math.max(original.lastIndexOf('/'), original.lastIndexOf('\\')) + 1);
        String plain = last.replaceAll("[^\\p{L}\\p{N}_. -]", "_").replaceAll("^[. -]+|[. ]+$", "");
        String name = shortened(plain);
        if (name.isEmpty()) {
            return otherwise;
        }
        return isDevice(name) ? "_" + name : name;
    }

    private static String shortened(String name) {
        if (name.length() <= LONGEST) {
            return name;
        }
        String ending = ending(name);
        return name.substring(0, LONGEST - ending.length()) + ending;
    }

    /** The same name with a number before its ending: {@code base-2.csv}. */
    static String numbered(String name, int number) {
        String ending = ending(name);
        return name.substring(0, name.length() - ending.length()) + "-" + number + ending;
    }

    private static String ending(String name) {
        int dot = name.lastIndexOf('.');
        return dot > 0 && name.length() - dot <= 8 ? name.substring(dot) : "";
    }
}
