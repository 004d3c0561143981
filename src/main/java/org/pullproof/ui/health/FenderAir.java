package org.pullproof.ui.health;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.pullproof.health.AirPlace;
import org.pullproof.health.Reading;

/**
 * Where air is heard at one cylinder, chosen by letters. Immutable.
 *
 * @param heard empty if nobody listened yet, present and empty if nothing is heard
 */
record FenderAir(Optional<Set<AirPlace>> heard) {
    static final FenderAir NOT_LISTENED = new FenderAir(Optional.empty());
    private static final char NOTHING = '0';

    FenderAir {
        heard = heard.map(Set::copyOf);
    }

    static FenderAir of(Reading.Leakdown leak) {
        return new FenderAir(leak.air());
    }

    /** A letter chooses its place, or takes it back; 0 is nothing heard; other keys change nothing. */
    FenderAir with(char key) {
        Set<AirPlace> places = EnumSet.noneOf(AirPlace.class);
        if (key == NOTHING) {
            return new FenderAir(Optional.of(places));
        }
        places.addAll(heard.orElse(Set.of()));
        return AirPlace.lettered(key)
                .map(place -> {
                    if (!places.remove(place)) {
                        places.add(place);
                    }
                    return new FenderAir(places.isEmpty() ? Optional.empty() : Optional.of(places));
                })
                .orElse(this);
    }

    /** The reading with where its air is heard. */
    Reading.Leakdown added(Reading.Leakdown leak) {
        return new Reading.Leakdown(
                leak.cylinder(),
                leak.value(),
                leak.supply(),
                leak.orifice(),
                heard,
                leak.round(),
                leak.conditions(),
                leak.time(),
                leak.note());
    }
}
