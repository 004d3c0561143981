package org.pullproof.drawing;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.pullproof.dyno.DynoFindings;
import org.pullproof.dyno.PowerCurve;
import org.pullproof.dyno.Pull;
import org.pullproof.dyno.PullFile;
import org.pullproof.dyno.PullFindings;
import org.pullproof.dyno.Trace;
import org.pullproof.engine.Setup;
import org.pullproof.units.Sentence;
import org.pullproof.weather.Factor;
import org.pullproof.weather.Standard;

/** Invented pulls: a parabola of power, a little more for each setup. */
final class Pulls {
    private Pulls() {}

    static List<Setup> setups(int count) {
        List<Setup> setups = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            setups.add(Setup.named("s" + i, i == 0 ? "base" : "timing " + (30 + i) + "°"));
        }
        return setups;
    }

    static DynoFindings findings(int setups, int pullsEach) {
        List<PullFindings> pulls = new ArrayList<>();
        for (int setup = 0; setup < setups; setup++) {
            for (int number = 1; number <= pullsEach; number++) {
                pulls.add(pull(setup, number, 2000, 5200, 1 + 0.002 * setup + 0.001 * number, Optional.empty()));
            }
        }
        return findings(pulls);
    }

    static DynoFindings findings(List<PullFindings> pulls) {
        return new DynoFindings(
                new Sentence("Base makes **201 hp**."),
                pulls,
                List.of(),
                OptionalInt.of(2600),
                OptionalInt.of(5000),
                false,
                Optional.empty(),
                Optional.empty());
    }

    static PullFindings pull(int setup, int number, int from, int to, double level, Optional<String> excluded) {
        double[] watt = new double[(to - from) / PowerCurve.STEP + 1];
        for (int i = 0; i < watt.length; i++) {
            double rpm = from + i * PowerCurve.STEP;
            watt[i] = level * 150e3 * (1 - Math.pow((rpm - 4600) / 4200, 2));
        }
        Pull pull = new Pull(
                "s" + setup,
                number,
                new PullFile("a.csv", "a.csv", "0".repeat(64)),
                LocalDateTime.of(2026, 6, 14, 13, 40),
                List.of(),
                Optional.empty(),
                excluded);
        return new PullFindings(
                pull,
                "s" + setup + "-" + number,
                Trace.of(new double[] {from, to}, new double[] {1, 2}),
                PowerCurve.of(from, watt),
                Optional.empty(),
                Optional.of(new Factor(Standard.SAE_J1349, 1.03, List.of(), List.of())),
                150 * level,
                4600,
                OptionalDouble.empty(),
                List.of());
    }
}
