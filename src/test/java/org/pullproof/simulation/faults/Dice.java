package org.pullproof.simulation.faults;

import java.util.Arrays;
import java.util.Random;

/** Draws of one engine, from a seed. */
final class Dice {
    private final Random random;

    Dice(long seed) {
        this.random = new Random(seed * 7919 + 17);
    }

    double between(double from, double to) {
        return from + (to - from) * random.nextDouble();
    }

    double normal(double mean, double sd) {
        return mean + sd * random.nextGaussian();
    }

    double factor(double sd) {
        return Math.exp(normal(0, sd));
    }

    boolean chance(double p) {
        return random.nextDouble() < p;
    }

    int below(int bound) {
        return random.nextInt(bound);
    }

    int weighted(double[] weights) {
        double sum = Arrays.stream(weights).sum();
        double at = random.nextDouble() * sum;
        for (int i = 0; i < weights.length - 1; i++) {
            at -= weights[i];
            if (at < 0) {
                return i;
            }
        }
        return weights.length - 1;
    }
}
