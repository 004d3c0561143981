package org.pullproof.dyno;

import java.util.Collections;
import java.util.List;

/**
 * The order in which setups are to be pulled on a day.
 *
 * @param visits names of the setups in order, one a visit
 * @param pulls at each visit, 1 to 12
 */
public record DayPlan(List<String> visits, int pulls) {
    public DayPlan {
        visits = List.copyOf(visits);
        if (visits.isEmpty() || visits.stream().anyMatch(String::isBlank)) {
            throw new IllegalArgumentException("A plan names the setups in their order: base,timing 32,base.");
        }
        if (pulls < 1 || pulls > 12) {
            throw new IllegalArgumentException("A visit has 1 to 12 pulls, was " + pulls + ".");
        }
    }

    /** One name for each planned pull, in order. */
    List<String> inOrder() {
        return visits.stream()
                .flatMap(visit -> Collections.nCopies(pulls, visit).stream())
                .toList();
    }
}
