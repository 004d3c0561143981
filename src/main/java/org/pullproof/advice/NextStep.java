package org.pullproof.advice;

import java.util.List;
import org.pullproof.car.Access;
import org.pullproof.units.Money;

/**
 * The one thing to do now.
 *
 * @param action what, in a few words: "Balance, cylinder by cylinder"
 * @param why one sentence
 * @param settles what it settles, one sentence
 * @param minutes about how long, minutes
 * @param cost what it costs in money
 * @param needs what the owner must permit for it
 * @param stage the sheet it is done on
 * @param cautions sentences that stand at the act
 */
public record NextStep(
        String action,
        String why,
        String settles,
        int minutes,
        Money cost,
        Access needs,
        Stage stage,
        List<String> cautions) {
    public NextStep {
        cautions = List.copyOf(cautions);
    }
}
