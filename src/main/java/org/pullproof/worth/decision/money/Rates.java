package org.pullproof.worth.decision.money;

import org.pullproof.worth.decision.answer.Input.Common;

/**
 * What the owner would pay for a unit of something: the net is linear in these.
 *
 * @param hp v, for one hp at the wheels
 * @param hour c_h, for an own hour
 * @param week u, for a week with the car
 * @param price of the car
 */
record Rates(double hp, double hour, double week, double price) {
    static Rates of(Scenario scenario) {
        return new Rates(
                scenario.value(Common.VALUE_PER_HP),
                scenario.value(Common.HOUR_PRICE),
                scenario.value(Common.WEEK_WITHOUT),
                scenario.value(Common.PRICE));
    }
}
