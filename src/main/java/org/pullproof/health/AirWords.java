package org.pullproof.health;

import java.util.Set;

/** Where air was heard, in words. */
final class AirWords {
    private AirWords() {}

    /** {@code air at the exhaust and the crankcase}. */
    static String of(Set<AirPlace> heard) {
        return "air at "
                + Phrase.list(heard.stream()
                        .sorted()
                        .map(place -> place == AirPlace.NEIGHBOUR ? "the neighbour's plug hole" : "the " + place.key())
                        .toList());
    }
}
