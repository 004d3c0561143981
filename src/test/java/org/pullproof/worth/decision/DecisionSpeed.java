package org.pullproof.worth.decision;

import org.pullproof.worth.decision.problem.Problem;

/**
 * How long an answer takes, beside a bare loop over as many draws. Not a test: run it when the engine has changed.
 *
 * <pre>java -cp "target/test-classes:target/classes:$(cat target/classpath.txt)" org.pullproof.worth.decision.DecisionSpeed</pre>
 */
final class DecisionSpeed {
    private static final int TIMES = 30;
    private static final int DRAWS = 100_000;
    private static final int LEAVES = 22;
    private static final int OPERATIONS = 12;
    private static final double NANOS_A_MILLI = 1e6;

    private DecisionSpeed() {}

    public static void main(String[] arguments) {
        for (String name : ReferenceCase.NAMES) {
            Problem problem = ReferenceCase.read(name).problem();
            report(name + ", whole answer", () -> new Decision(1).answer(problem));
        }
        report("bare loop", DecisionSpeed::bareLoop);
    }

    private static void report(String what, Runnable work) {
        double first = millis(work);
        double best = first;
        for (int k = 0; k < TIMES; k++) {
            best = Math.min(best, millis(work));
        }
        System.out.printf("%-45s first %6.0f ms, warm %6.0f ms%n", what, first, best);
    }

    private static double millis(Runnable work) {
        long start = System.nanoTime();
        work.run();
        return (System.nanoTime() - start) / NANOS_A_MILLI;
    }

    /** 22 leaves × 100,000 draws × about 25 operations, nothing kept but a sum. */
    private static void bareLoop() {
        double sum = 0;
        for (int leaf = 0; leaf < LEAVES; leaf++) {
            for (int i = 0; i < DRAWS; i++) {
                double x = i * 1e-5;
                for (int k = 0; k < OPERATIONS; k++) {
                    x = x * 0.999 + leaf;
                }
                sum += Math.max(x, 0);
            }
        }
        if (Double.isNaN(sum)) {
            throw new IllegalStateException("The loop must come to a number.");
        }
    }
}
