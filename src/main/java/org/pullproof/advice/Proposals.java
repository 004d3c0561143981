package org.pullproof.advice;

import java.util.List;
import org.pullproof.car.Access;
import org.pullproof.health.TestKind;
import org.pullproof.tuneup.Step;
import org.pullproof.units.Money;
import org.pullproof.worth.TestPrice;
import org.pullproof.worth.TestPrices;

/** Makes next steps with their price, access and cautions, so that the rules only say what, why and what it settles. */
final class Proposals {
    private static final int A_MINUTE_AT_THE_DESK = 2;

    private final TestPrices prices;
    private final Cautions cautions;

    Proposals(TestPrices prices, Cautions cautions) {
        this.prices = prices;
        this.cautions = cautions;
    }

    /** A test of the engine's health. */
    NextStep test(Situation now, TestKind test, String action, String why, String settles) {
        TestPrice price = prices.of(test.key());
        return new NextStep(
                action,
                why,
                settles,
                price.minutes(now.cylinders()),
                now.everRead(test) ? price.again() : price.first(),
                test.access(),
                Stage.HEALTH,
                cautions.of(test));
    }

    /** An act with a price and cautions of its own. */
    NextStep act(Situation now, String key, Access needs, Stage stage, String action, String why, String settles) {
        TestPrice price = prices.of(key);
        return new NextStep(
                action, why, settles, price.minutes(now.cylinders()), price.first(), needs, stage, cautions.of(key));
    }

    /** A step of the tune-up; only who owns the car tunes it. */
    NextStep step(Step step, String why, String settles) {
        return new NextStep(
                step.title(),
                why,
                settles,
                step.minutes(),
                step.parts(),
                Access.OWN_IT,
                Stage.TUNE_UP,
                cautions.of(step));
    }

    /** Work on the car that costs time only, with the cautions of an act. */
    NextStep work(int minutes, String act, Stage stage, String action, String why, String settles) {
        return new NextStep(action, why, settles, minutes, free(), Access.OWN_IT, stage, cautions.of(act));
    }

    /** Something to tell or to weigh, away from the car. */
    NextStep desk(Stage stage, String action, String why, String settles) {
        return new NextStep(
                action, why, settles, A_MINUTE_AT_THE_DESK, free(), Access.LOOK_ONLY, stage, List.of(cautions.last()));
    }

    private static Money free() {
        return Money.of(0, "USD");
    }
}
