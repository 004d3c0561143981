package org.pullproof.changes;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.pullproof.dyno.PowerCurve;
import org.pullproof.dyno.Pull;
import org.pullproof.dyno.PullFile;
import org.pullproof.dyno.PullFindings;
import org.pullproof.dyno.Trace;
import org.pullproof.engine.Setup;
import org.pullproof.units.Figures;
import org.pullproof.units.UnitSystem;
import org.pullproof.weather.Factor;
import org.pullproof.weather.Standard;

/** Judging all changes of 100 pulls anew, as after an edit, against one bare QR of that size. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class JudgeBenchmark {
    private static final int PULLS = 100;
    private static final int SETUPS = 6;
    private static final int POINTS = 320;

    private final List<Setup> setups = setups();
    private final List<Change> changes = changes();
    private final List<PullFindings> pulls = pulls();
    private final RealMatrix matrix = matrix();
    private final RealVector right = new ArrayRealVector(PULLS, 1);

    @Benchmark
    public ChangeLedger judge() {
        return new ChangeJudge().judge(setups, changes, "s0", pulls, 1, new Figures(UnitSystem.US));
    }

    @Benchmark
    public RealVector bareQr() {
        return new QRDecomposition(matrix).getSolver().solve(right);
    }

    private static List<Setup> setups() {
        List<Setup> setups = new ArrayList<>();
        for (int i = 0; i < SETUPS; i++) {
            setups.add(Setup.named("s" + i, "setup " + i));
        }
        return setups;
    }

    private static List<Change> changes() {
        List<Change> changes = new ArrayList<>();
        for (int i = 1; i < SETUPS; i++) {
            changes.add(new Change("s0", "s" + i, "change " + i, at(0), Optional.empty(), Set.of()));
            changes.add(new Change("s" + i, "s0", "back", at(0), Optional.empty(), Set.of()));
        }
        return changes;
    }

    private static LocalDateTime at(int pull) {
        return LocalDateTime.of(2026, 6, 14, 9, 0).plusMinutes(5L * pull);
    }

    /** Visits of five pulls: base, one, base, two, … */
    private static List<PullFindings> pulls() {
        Random random = new Random(7);
        int[] numbers = new int[SETUPS];
        List<PullFindings> pulls = new ArrayList<>();
        for (int i = 0; i < PULLS; i++) {
            int visit = i / 5;
            int setup = visit % 2 == 0 ? 0 : 1 + visit / 2 % (SETUPS - 1);
            double level = (1 + 0.005 * setup) * (1 + 0.004 * random.nextGaussian());
            pulls.add(pull("s" + setup, ++numbers[setup], i, level, random));
        }
        return pulls;
    }

    private static PullFindings pull(String setup, int number, int place, double level, Random random) {
        double[] watt = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            watt[i] = level * 150e3 * (1 - Math.pow((i - 200) / 320.0, 2)) * (1 + 0.001 * random.nextGaussian());
        }
        Pull pull = new Pull(
                setup,
                number,
                new PullFile("p", "p", "0".repeat(64)),
                at(place),
                List.of(),
                Optional.empty(),
                Optional.empty());
        return new PullFindings(
                pull,
                pull.id(),
                Trace.of(new double[] {2000, 5190}, new double[] {1, 2}),
                PowerCurve.of(2000, watt),
                Optional.empty(),
                Optional.of(new Factor(Standard.SAE_J1349, 1, List.of(), List.of())),
                150 * level,
                4000,
                OptionalDouble.of(140 * level),
                List.of());
    }

    /** A column for each setup, one for the drift, and a step at each of the visits. */
    private static RealMatrix matrix() {
        Random random = new Random(3);
        double[][] rows = new double[PULLS][SETUPS + 1 + PULLS / 5];
        for (double[] row : rows) {
            for (int i = 0; i < row.length; i++) {
                row[i] = random.nextGaussian();
            }
        }
        return new Array2DRowRealMatrix(rows, false);
    }
}
