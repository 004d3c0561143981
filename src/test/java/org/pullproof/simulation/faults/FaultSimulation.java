package org.pullproof.simulation.faults;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.pullproof.files.TradeConstants;
import org.pullproof.health.faults.EngineState;
import org.pullproof.health.faults.FaultConstants;
import org.pullproof.health.faults.FaultModel;
import org.pullproof.session.Judgement;

/**
 * Tries the fault model on many invented engines and prints what it gets right, beside the figures that the method was published with
 * in this project (its own simulator, seeds 5000 to 5999).
 *
 * <p>Arguments: number of engines, first seed.
 */
public final class FaultSimulation {
    private final FaultConstants constants = new TradeConstants().faults(Judgement.own());
    private final FaultModel model = new FaultModel(constants);

    public static void main(String[] arguments) {
        int engines = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 1000;
        long first = arguments.length > 1 ? Long.parseLong(arguments[1]) : 1;
        new FaultSimulation().print(engines, first, System.out);
    }

    /** Scores of some engines at one amount of evidence. */
    List<Score> scores(int engines, long firstSeed, Evidence evidence) {
        List<Score> scores = new ArrayList<>();
        for (long seed = firstSeed; seed < firstSeed + engines; seed++) {
            Dice dice = new Dice(seed);
            InventedEngine engine = new InventedEngine(dice);
            scores.add(Score.of(engine, model.weigh(evidence.of(new Bench(engine, dice, constants).all())), evidence));
        }
        return scores;
    }

    private void print(int engines, long firstSeed, PrintStream out) {
        out.printf("%d engines from seed %d; partial evidence on the first %d%n%n", engines, firstSeed, engines / 4);
        out.println(
                "| evidence | single faults right | (method) | faulty cylinder found | sound called faulty | (method)"
                        + " | other cylinder blamed |");
        out.println("|---|---|---|---|---|---|---|");
        List<Score> all = List.of();
        for (Evidence evidence : Evidence.values()) {
            boolean whole = evidence == Evidence.ALL || evidence == Evidence.BALANCE;
            all = scores(whole ? engines : engines / 4, firstSeed, evidence);
            row(evidence, all, out);
        }
        out.println();
        byKind(all, out);
        out.println();
        new Calibration(all).print(out);
    }

    private static void row(Evidence evidence, List<Score> scores, PrintStream out) {
        List<Score> single = only(scores, score -> score.kind().single());
        List<Score> sound = only(scores, Score::trulySound);
        double found = single.stream().mapToInt(Score::found).sum();
        double faulty = single.stream().mapToInt(Score::faulty).sum();
        out.printf(
                "| %s | %.0f %% | %s | %.0f %% | %.1f %% | %s | %.1f %% |%n",
                evidence.words(),
                percent(single, Score::right),
                List.of("74 %", "59 %", "68 %", "85 %", "91 %")
                        .get(List.of(Evidence.values()).indexOf(evidence)),
                100 * found / faulty,
                percent(sound, Score::engineCalled),
                List.of("0.8 %", "1.8 %", "1.8 %", "1.8 %", "0.8 %")
                        .get(List.of(Evidence.values()).indexOf(evidence)),
                percent(single, score -> score.blamed() > 0));
    }

    private static void byKind(List<Score> scores, PrintStream out) {
        out.println("Everything read, right of n by kind:");
        for (Kind kind : Kind.values()) {
            List<Score> of = only(scores, score -> score.kind() == kind);
            out.printf(
                    "%s %d/%d, likeliest state other than ok %d%n",
                    kind,
                    only(of, Score::right).size(),
                    of.size(),
                    only(of, score -> score.state() != EngineState.OK).size());
        }
    }

    static List<Score> only(List<Score> scores, Predicate<Score> which) {
        return scores.stream().filter(which).toList();
    }

    static double percent(List<Score> scores, Predicate<Score> which) {
        return scores.isEmpty() ? Double.NaN : 100.0 * only(scores, which).size() / scores.size();
    }
}
