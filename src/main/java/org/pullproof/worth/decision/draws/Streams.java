package org.pullproof.worth.decision.draws;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Supplier;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * The draws of every named ingredient. Each has its own stream, seeded by (seed, kind, name), so that another option, line or
 * test changes no other draw, and all options meet the same ones.
 *
 * <p>Each of ten batches is a Latin hypercube: one uniform from each of n/10 equal slices, shuffled, then the inverse of the
 * distribution (McKay, Beckman and Conover 1979, from memory). Not safe between threads; arrays handed out are shared and must not
 * be written to.
 */
public final class Streams {
    /** What the offset and the prime of the 64-bit FNV-1a hash are. */
    private static final long FNV_OFFSET = 0xcbf29ce484222325L;

    private static final long FNV_PRIME = 0x100000001b3L;

    private final long seed;
    private final int size;
    private final NormalDistribution normal = new NormalDistribution();
    private final Map<String, double[]> drawn = new HashMap<>();

    /**
     * Streams of so many draws.
     *
     * @param size a multiple of ten, or 1 when nothing has to be drawn
     * @throws IllegalArgumentException if it is neither
     */
    public Streams(long seed, int size) {
        if (size != 1 && (size < Batches.COUNT || size % Batches.COUNT != 0)) {
            throw new IllegalArgumentException("The number of draws must be 1 or a multiple of ten, was " + size + ".");
        }
        this.seed = seed;
        this.size = size;
    }

    public int size() {
        return size;
    }

    /** Uniform between 0 and 1, neither reached. */
    public double[] uniform(Ingredient kind, String name) {
        return kept("uniform", kind, name, () -> hypercubes(random(kind, name)));
    }

    /** Standard normal. */
    public double[] normal(Ingredient kind, String name) {
        return kept("normal", kind, name, () -> map(uniform(kind, name), normal::inverseCumulativeProbability));
    }

    /** Student's t with ν degrees of freedom, cut at ± 6: beyond, its exponential has no mean. */
    public double[] student(Ingredient kind, String name, double degrees) {
        return kept("t" + degrees, kind, name, () -> map(normal(kind, name), new StudentQuantile(degrees)));
    }

    private double[] kept(String shape, Ingredient kind, String name, Supplier<double[]> draw) {
        String key = shape + '\0' + kind.key() + '\0' + name;
        double[] known = drawn.get(key);
        if (known == null) {
            known = draw.get();
            drawn.put(key, known);
        }
        return known;
    }

    private SplittableRandom random(Ingredient kind, String name) {
        long hash = FNV_OFFSET;
        for (byte b : (kind.key() + '\0' + name).getBytes(StandardCharsets.UTF_8)) {
            hash = (hash ^ (b & 0xff)) * FNV_PRIME;
        }
        return new SplittableRandom(new SplittableRandom(seed).nextLong() ^ hash);
    }

    private double[] hypercubes(SplittableRandom random) {
        double[] draws = new double[size];
        int batches = Batches.of(size);
        int slices = size / batches;
        for (int b = 0; b < batches; b++) {
            for (int k = 0; k < slices; k++) {
                draws[b * slices + k] = (k + random.nextDouble(Double.MIN_NORMAL, 1)) / slices;
            }
            shuffle(draws, b * slices, slices, random);
        }
        return draws;
    }

    private static void shuffle(double[] draws, int from, int count, SplittableRandom random) {
        for (int k = count - 1; k > 0; k--) {
            int other = from + random.nextInt(k + 1);
            double kept = draws[from + k];
            draws[from + k] = draws[other];
            draws[other] = kept;
        }
    }

    private static double[] map(double[] from, DoubleUnaryOperator f) {
        double[] to = new double[from.length];
        for (int i = 0; i < from.length; i++) {
            to[i] = f.applyAsDouble(from[i]);
        }
        return to;
    }
}
