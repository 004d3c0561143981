package org.pullproof.worth.decision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.pullproof.worth.decision.answer.Knowing.Ingredient;
import org.pullproof.worth.decision.answer.Knowing.Kind;
import org.pullproof.worth.decision.draws.Batches;

/**
 * At most what knowing a bill or a gain exactly is worth, policies inside the options kept: in each tenth of the ingredient choose
 * among the allowed options by the means of the even batches and be paid by the odd ones, less what the best option earns there; then
 * the other way round; halved.
 */
final class Ingredients {
    private static final int TENTHS = 10;

    private final double[][] nets;
    private final int best;
    private final int draws;

    /**
     * Ingredients of an answer.
     *
     * @param options realised, in the order of the problem
     */
    Ingredients(List<Realised> options, double[] chances, BitSet allowed, int best) {
        this.nets = allowed.stream()
                .mapToObj(a -> options.get(a).overStates(chances))
                .toArray(double[][]::new);
        this.best = allowed.stream().boxed().toList().indexOf(best);
        this.draws = nets[0].length;
    }

    /** Every line and gain that is worth knowing, the largest first. */
    List<Ingredient> all(Map<String, double[]> lines, Map<String, double[]> gains) {
        List<Ingredient> all = new ArrayList<>();
        lines.forEach((name, draw) -> all.add(new Ingredient(Kind.QUOTE, name, value(draw))));
        gains.forEach((name, draw) -> all.add(new Ingredient(Kind.GAIN, name, value(draw))));
        return all.stream()
                .filter(ingredient -> ingredient.atMost() > 0)
                .sorted(Comparator.comparingDouble(Ingredient::atMost).reversed())
                .toList();
    }

    private double value(double[] ingredient) {
        if (draws < TENTHS) {
            return 0;
        }
        int[] tenth = tenths(ingredient);
        return Math.max(0, (chosenBy(0, tenth) + chosenBy(1, tenth)) / 2);
    }

    /** Which tenth each draw is in; equal draws are in the same one, as knowing them tells nothing apart. */
    private int[] tenths(double[] ingredient) {
        double[] sorted = ingredient.clone();
        Arrays.sort(sorted);
        double[] cuts = new double[TENTHS - 1];
        for (int k = 0; k < cuts.length; k++) {
            cuts[k] = sorted[(int) ((long) (k + 1) * draws / TENTHS)];
        }
        int[] tenth = new int[draws];
        for (int i = 0; i < draws; i++) {
            while (tenth[i] < cuts.length && ingredient[i] >= cuts[tenth[i]]) {
                tenth[i]++;
            }
        }
        return tenth;
    }

    /** Chosen by the batches of one parity, paid by the others. */
    private double chosenBy(int parity, int[] tenth) {
        double[][] chosen = sums(parity, tenth);
        double[][] paid = sums(1 - parity, tenth);
        double gain = 0;
        for (int t = 0; t < TENTHS; t++) {
            gain += paid[t][most(chosen[t])] - paid[t][best];
        }
        return gain / (draws / 2.0);
    }

    private double[][] sums(int parity, int[] tenth) {
        double[][] sums = new double[TENTHS][nets.length];
        int each = draws / Batches.COUNT;
        for (int i = 0; i < draws; i++) {
            if (i / each % 2 == parity) {
                for (int a = 0; a < nets.length; a++) {
                    sums[tenth[i]][a] += nets[a][i];
                }
            }
        }
        return sums;
    }

    private static int most(double[] values) {
        double most = Arrays.stream(values).max().orElseThrow();
        return IntStream.range(0, values.length)
                .filter(a -> values[a] == most)
                .findFirst()
                .orElseThrow();
    }
}
