package org.pullproof.worth.decision;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.pullproof.worth.decision.answer.Answer;
import org.pullproof.worth.decision.problem.Problem;

/** A whole answer of about 100,000 draws, flips and values of tests included, against a bare loop over as many draws. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class DecisionBenchmark {
    private static final int DRAWS = 100_000;
    private static final int LEAVES = 22;
    private static final int OPERATIONS = 12;

    /** The reference cases of the method. */
    @Param({"1-before-purchase", "2-healthy-with-budget", "3-bad-cylinder-altitude", "4-after-ten-changes"})
    public String question;

    private Problem problem;

    @Setup
    public void read() {
        problem = ReferenceCase.read(question).problem();
    }

    @Benchmark
    public Answer answer() {
        return new Decision(1).answer(problem);
    }

    /** 22 leaves × 100,000 draws × about 25 operations, nothing kept but a sum. */
    @Benchmark
    public double bareLoop() {
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
        return sum;
    }
}
