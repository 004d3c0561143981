package org.pullproof.changes;

/** What is assumed beforehand about one combination of coefficients, written as one more row of the regression. Immutable. */
final class PriorRow {
    private final double[] row;
    private final double response;

    /**
     * @param row weights of the columns
     * @param response what the weighted sum is assumed to be
     */
    PriorRow(double[] row, double response) {
        this.row = row.clone();
        this.response = response;
    }

    /** A row on one column only. */
    static PriorRow on(int column, int columns, double weight, double response) {
        double[] row = new double[columns];
        row[column] = weight;
        return new PriorRow(row, response);
    }

    /** Weights of the columns. */
    double[] row() {
        return row.clone();
    }

    /** What the weighted sum is assumed to be. */
    double response() {
        return response;
    }
}
