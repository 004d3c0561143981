package org.pullproof.session;

import java.util.List;
import java.util.Optional;

/**
 * One constant that the program judges by, as it stands in the program's files: a number, or several that belong together.
 *
 * @param name path of the constant: {@code faults.priors.shares}
 * @param words what it is, a sentence
 * @param unit of its numbers; may be empty
 * @param status "judgement", "published", "common practice, no source", or "computation" for what only steers the arithmetic
 * @param sum what the numbers of each row add up to, where they have to
 * @param numbers its numbers
 */
public record TradeConstant(
        String name, String words, String unit, String status, Optional<Double> sum, List<Figure> numbers) {
    /** How far an edited number may go from the program's own. */
    private static final double FARTHEST = 10;

    public TradeConstant {
        numbers = List.copyOf(numbers);
    }

    /**
     * One number of a constant.
     *
     * @param name path of the number: {@code faults.priors.shares.rings}
     * @param label what tells it from the others of its constant: "rings"; empty where it is the only one
     * @param row the numbers with the same row add up to {@link TradeConstant#sum}
     * @param own the program's own value
     */
    public record Figure(String name, String label, String row, double own) {}

    /** Only what the trade judges may be edited; a published figure and a step of the arithmetic are shown. */
    public boolean isEditable() {
        return status.startsWith("judgement") || status.startsWith("common practice");
    }

    /** Least value that a number may be given: a tenth of the program's own. */
    public double least(Figure number) {
        if (number.own() == 0) {
            return unit.equals("ln") ? -1 : 0;
        }
        return number.own() < 0 ? number.own() * FARTHEST : number.own() / FARTHEST;
    }

    /** Greatest value that a number may be given: ten times the program's own; a chance or a share goes to 1. */
    public double most(Figure number) {
        if (number.own() == 0) {
            return Math.min(highest(), unit.equals("ln") ? 1 : Double.MAX_VALUE);
        }
        return number.own() < 0 ? number.own() / FARTHEST : Math.min(number.own() * FARTHEST, highest());
    }

    private double highest() {
        if (unit.equals("chance") || unit.equals("share")) {
            return 1;
        }
        return unit.startsWith("%") ? 100 : Double.MAX_VALUE;
    }
}
