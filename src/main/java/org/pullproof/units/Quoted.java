package org.pullproof.units;

/** What a person typed or a file holds, as a sentence quotes it: enough to find it, never more than forty characters. */
public final class Quoted {
    private static final int LONGEST = 40;

    private Quoted() {}

    /** The text itself or its beginning with an ellipsis. */
    public static String of(String text) {
        return text.length() > LONGEST ? text.substring(0, LONGEST) + "…" : text;
    }
}
