package org.pullproof.changes;

/**
 * What is assumed beforehand about one combination of coefficients, written as one more row of the regression.
 *
 * @param row weights of the columns
 * @param response what the weighted sum is assumed to be
 */
record PriorRow(double[] row, double response) {
    /** A row on one column only. */
    static PriorRow on(int column, int columns, double weight, double response) {
        double[] row = new double[columns];
        row[column] = weight;
        return new PriorRow(row, response);
    }
}
