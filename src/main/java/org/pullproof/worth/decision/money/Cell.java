package org.pullproof.worth.decision.money;

import org.pullproof.worth.decision.draws.Batches;

/**
 * The money of one end in one state, in every draw.
 *
 * <pre>  keep   R − M − price − c_h·T − u·K + v·G − L,   L = max(0, min(C_fail, R − S)) if it fails
 *   sell   R − φ·max(0, W − D(s')) − M − price − c_h·T
 *   parts  S − M − price − c_h·T
 *   walk     − M         − c_h·T</pre>
 *
 * <p>In means L counts as H'·L, whether this draw fails or not: they scatter far less.
 */
final class Cell {
    private final End end;
    private final Bill bill;
    private final Gains.Gained gained;
    private final Fate fate;
    private final double[] meanCar;
    private final double[] meanLoss;

    /**
     * What an end means for the money in a state.
     *
     * @param carBefore W − D(s), S or 0: what the car fetches without the work
     * @param cureGain D(s) − D(s'), or 0 where there is no R
     * @param resale ρ, or 0 where there is no R
     * @param selling what selling costs
     * @param parts S
     * @param failure H', 0 unless the car is kept
     * @param pays whether the price is paid
     * @param waits whether weeks without the car count
     * @param laidUp weeks that it stands still
     */
    record End(
            double carBefore,
            double cureGain,
            double resale,
            double selling,
            double parts,
            double failure,
            boolean pays,
            boolean waits,
            double laidUp) {}

    Cell(End end, Bill bill, Gains.Gained gained, Fate fate) {
        this.end = end;
        this.bill = bill;
        this.gained = gained;
        this.fate = fate;
        int draws = bill.money.length;
        meanCar = new double[Batches.of(draws)];
        meanLoss = new double[meanCar.length];
        int each = draws / meanCar.length;
        for (int b = 0; b < meanCar.length; b++) {
            average(b, each);
        }
    }

    private void average(int b, int each) {
        double sumCar = 0;
        double sumLoss = 0;
        boolean mayFail = end.failure() > 0;
        for (int i = b * each; i < (b + 1) * each; i++) {
            double car = car(i);
            sumCar += car;
            sumLoss += mayFail ? loss(car, i) : 0;
        }
        meanCar[b] = sumCar / each;
        meanLoss[b] = end.failure() * sumLoss / each;
    }

    private double car(int i) {
        return end.carBefore() + Math.max(end.cureGain(), end.resale() * bill.engine[i]);
    }

    private double loss(double car, int i) {
        return Math.max(0, Math.min(fate.cost[i], car - end.parts()));
    }

    /** M in one draw, without the price. */
    double money(int i) {
        return bill.money[i];
    }

    /** N in one draw, with the failure that is drawn. */
    double net(int i, Rates rates) {
        double car = car(i);
        double loss = fate.uniform[i] < end.failure() ? loss(car, i) : 0;
        return car
                - end.selling()
                - bill.money[i]
                - (end.pays() ? rates.price() : 0)
                - rates.hour() * bill.hours[i]
                - (end.waits() ? rates.week() * (bill.weeks[i] + end.laidUp()) : 0)
                + rates.hp() * gained.hp[i]
                - loss;
    }

    /** The mean of a figure in a batch; the chance over the budget is not known here. */
    double mean(Figure figure, int b, Rates rates) {
        return switch (figure) {
            case NET -> meanNet(b, rates);
            case CAR -> meanCar[b] - end.selling();
            case MONEY -> -bill.meanMoney[b];
            case PRICE -> end.pays() ? -rates.price() : 0;
            case HOURS_PRICED -> -rates.hour() * bill.meanHours[b];
            case WEEKS_PRICED -> end.waits() ? -rates.week() * (bill.meanWeeks[b] + end.laidUp()) : 0;
            case POWER_PRICED -> rates.hp() * gained.mean[b];
            case FAILURE -> -meanLoss[b];
            case HOURS -> bill.meanHours[b];
            case WEEKS -> bill.meanWeeks[b] + end.laidUp();
            case POWER -> gained.mean[b];
            case OVER_BUDGET -> throw new IllegalArgumentException("The budget is the ledger's.");
        };
    }

    private double meanNet(int b, Rates rates) {
        return meanCar[b]
                - end.selling()
                - bill.meanMoney[b]
                - (end.pays() ? rates.price() : 0)
                - rates.hour() * bill.meanHours[b]
                - (end.waits() ? rates.week() * (bill.meanWeeks[b] + end.laidUp()) : 0)
                + rates.hp() * gained.mean[b]
                - meanLoss[b];
    }
}
