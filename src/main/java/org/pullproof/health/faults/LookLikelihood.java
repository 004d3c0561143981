package org.pullproof.health.faults;

import java.util.List;
import java.util.Optional;

/** How likely the look of a plug is: trust · P(look | fault) + (1 − trust)/looks. */
final class LookLikelihood {
    private final FaultConstants.PlugLooks constants;

    LookLikelihood(FaultConstants.PlugLooks constants) {
        this.constants = constants;
    }

    /** 1 where it was not looked at. */
    double of(Optional<String> look, Fault fault) {
        return look.map(word -> of(word, fault)).orElse(1.0);
    }

    double of(String look, Fault fault) {
        int place = constants.looks().indexOf(look);
        List<Double> percent = constants.percent().getOrDefault(fault, List.of());
        if (place < 0 || percent.size() != constants.looks().size()) {
            throw new IllegalArgumentException("A plug's look is one of " + constants.looks() + ", was " + look);
        }
        return constants.trust() * percent.get(place) / 100
                + (1 - constants.trust()) / constants.looks().size();
    }
}
