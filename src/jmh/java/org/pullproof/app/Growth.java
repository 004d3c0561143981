package org.pullproof.app;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.pullproof.advice.Appraisal;
import org.pullproof.testing.Tools;
import org.pullproof.units.Figures;
import org.pullproof.units.UnitSystem;

/**
 * Prints how opening, judging and reporting grow with the number of pulls: the time t of each number n, and the exponent b of t ~ n^b
 * by least squares in logarithms. Nothing may grow much faster than the pulls do.
 */
public final class Growth {
    private static final List<Integer> PULLS = List.of(1250, 2500, 5000, 10000);
    private static final int SAMPLES = 300;
    private static final int TIMES = 3;

    private final PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    private final Toolbox tools = Tools.ofTheProgram();

    private Growth() {}

    public static void main(String[] arguments) throws Exception {
        List<Integer> pulls = arguments.length == 0
                ? PULLS
                : Arrays.stream(arguments).map(Integer::valueOf).toList();
        new Growth().print(pulls);
    }

    private void print(List<Integer> numbers) throws Exception {
        List<SimpleRegression> fits = List.of(new SimpleRegression(), new SimpleRegression(), new SimpleRegression());
        for (int pulls : numbers) {
            Path folder = new LargeSession(pulls, SAMPLES).made();
            List<Double> seconds = seconds(folder);
            for (int i = 0; i < fits.size(); i++) {
                fits.get(i).addData(Math.log(pulls), Math.log(seconds.get(i)));
            }
            out.printf(
                    "%6d pulls: open %.2f s, judge %.2f s, report %.2f s%n",
                    pulls, seconds.get(0), seconds.get(1), seconds.get(2));
        }
        out.printf(
                "exponent: open %.2f, judge %.2f, report %.2f%n",
                fits.get(0).getSlope(), fits.get(1).getSlope(), fits.get(2).getSlope());
    }

    private List<Double> seconds(Path folder) throws Exception {
        OpenSession open = tools.desk().open(folder);
        Figures figures = new Figures(UnitSystem.METRIC);
        Appraisal appraisal = tools.appraise().of(open, figures);
        return List.of(
                best(() -> tools.desk().open(folder)),
                best(() -> tools.appraise().of(open, figures)),
                best(() -> tools.makeReport().text(appraisal)));
    }

    /** The shortest of several: what else the computer does only ever adds. */
    private static double best(Callable<?> work) throws Exception {
        List<Double> all = new ArrayList<>();
        for (int i = 0; i < TIMES; i++) {
            long begins = System.nanoTime();
            work.call();
            all.add((System.nanoTime() - begins) / 1e9);
        }
        return all.stream().min(Double::compare).orElseThrow(IOException::new);
    }
}
