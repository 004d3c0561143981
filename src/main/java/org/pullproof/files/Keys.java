package org.pullproof.files;

import java.util.Locale;

/** How a choice is written in our files: lower case, words joined by hyphens. */
final class Keys {
    private Keys() {}

    /** {@code PLUGS_OUT} is written {@code plugs-out}. */
    static String of(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
