package org.pullproof.robustness;

/** Whether words could do something besides being read. */
final class Inertness {
    private Inertness() {}

    /** Whether a terminal or a reader is steered: a control sign other than a line's end, or a turn of the direction (UAX #9). */
    static boolean steers(String output) {
        return output.chars()
                .anyMatch(sign -> (sign != '\n' && Character.isISOControl(sign))
                        || sign == 0x200E
                        || sign == 0x200F
                        || (sign >= 0x202A && sign <= 0x202E)
                        || (sign >= 0x2066 && sign <= 0x2069));
    }
}
