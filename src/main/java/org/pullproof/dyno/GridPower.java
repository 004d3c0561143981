package org.pullproof.dyno;

/**
 * Power of a pull at the multiples of {@link PowerCurve#STEP} inside it, with its running sums: the spread over any stretch is then
 * told without going through it, however many pulls are held against each other. Powers are kept as what they are above their mean,
 * so that no digits are lost in the squares.
 */
final class GridPower {
    private final int first;
    private final double[] watt;
    private final double[] sums;
    private final double[] squares;

    private GridPower(int first, double[] watt) {
        this.first = first;
        this.watt = watt;
        this.sums = new double[watt.length + 1];
        this.squares = new double[watt.length + 1];
        for (int i = 0; i < watt.length; i++) {
            sums[i + 1] = sums[i] + watt[i];
            squares[i + 1] = squares[i] + watt[i] * watt[i];
        }
    }

    static GridPower of(Trace trace) {
        int first = (int) Math.ceil(trace.firstRpm() / PowerCurve.STEP);
        int last = (int) Math.floor(trace.lastRpm() / PowerCurve.STEP);
        double[] watt = new double[Math.max(0, last - first + 1)];
        double mean = 0;
        for (int i = 0; i < watt.length; i++) {
            watt[i] = trace.wattAt((double) (first + i) * PowerCurve.STEP);
            mean += watt[i] / watt.length;
        }
        for (int i = 0; i < watt.length; i++) {
            watt[i] -= mean;
        }
        return new GridPower(first, watt);
    }

    /**
     * Sum of squares about the mean, W²: Σx² − (Σx)²/n.
     *
     * @param from first point, in steps from standstill; inside the pull
     * @param to point behind the last, above {@code from}
     */
    double spread(int from, int to) {
        double sum = sum(from, to);
        return squares[to - first] - squares[from - first] - sum * sum / (to - from);
    }

    private double sum(int from, int to) {
        return sums[to - first] - sums[from - first];
    }

    /**
     * Correlation with another pull (Pearson's r, P, any handbook of statistics) over points that both have.
     *
     * @param from first point, in steps from standstill
     * @param to point behind the last, above {@code from}
     */
    double correlation(GridPower other, int from, int to) {
        double products = 0;
        for (int point = from; point < to; point++) {
            products += watt[point - first] * other.watt[point - other.first];
        }
        double together = products - sum(from, to) * other.sum(from, to) / (to - from);
        return together / Math.sqrt(spread(from, to) * other.spread(from, to));
    }
}
