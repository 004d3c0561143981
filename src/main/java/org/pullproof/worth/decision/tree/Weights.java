package org.pullproof.worth.decision.tree;

/** Arithmetic on weights by state. */
public final class Weights {
    private Weights() {}

    public static double sum(double[] weight) {
        double sum = 0;
        for (double w : weight) {
            sum += w;
        }
        return sum;
    }

    public static double dot(double[] weight, double[] value) {
        double sum = 0;
        for (int s = 0; s < weight.length; s++) {
            sum += weight[s] * value[s];
        }
        return sum;
    }

    public static double[] times(double[] weight, double[] likelihood) {
        double[] product = new double[weight.length];
        for (int s = 0; s < weight.length; s++) {
            product[s] = weight[s] * likelihood[s];
        }
        return product;
    }

    static void addProduct(double[] to, double[] weight, double[] value) {
        for (int s = 0; s < to.length; s++) {
            to[s] += weight[s] * value[s];
        }
    }
}
