package org.pullproof.worth.decision.answer;

/**
 * What the mean net of an option consists of, each as it counts: what the option has more than the reference, costs negative.
 *
 * @param money repair and other money
 * @param price the price of the car
 * @param hours own hours at their price
 * @param weeks weeks without the car at their price
 * @param power what the gained power is worth in driving
 * @param car what the car fetches or stays worth afterwards
 * @param failure what a failure while kept costs on average
 */
public record Parts(double money, double price, double hours, double weeks, double power, double car, double failure) {
    public double sum() {
        return money + price + hours + weeks + power + car + failure;
    }

    public Parts minus(Parts other) {
        return new Parts(
                money - other.money,
                price - other.price,
                hours - other.hours,
                weeks - other.weeks,
                power - other.power,
                car - other.car,
                failure - other.failure);
    }
}
