package org.pullproof.app;

import com.sun.management.OperatingSystemMXBean;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.pullproof.advice.Appraisal;
import org.pullproof.dyno.DynoAssessor;
import org.pullproof.files.TradeConstants;
import org.pullproof.session.Judgement;
import org.pullproof.session.Session;
import org.pullproof.testing.Tools;
import org.pullproof.units.Figures;
import org.pullproof.units.UnitSystem;
import org.pullproof.weather.Correction;
import org.pullproof.weather.Standard;

/**
 * Prints how the work grows with the number of pulls: the time t of each number n, and the exponent b of t ~ n^b by least squares in
 * logarithms. Opening and flagging are tried up to 10,000 pulls; the whole judgement, whose fit holds every pull of a day against every
 * other, and the report up to 400.
 */
public final class Growth {
    private static final List<Integer> MANY = List.of(1250, 2500, 5000, 10000);
    private static final List<Integer> SOME = List.of(50, 100, 200, 400);
    private static final int SAMPLES = 300;
    private static final int TIMES = 4;

    private final PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    private final Toolbox tools = Tools.ofTheProgram();
    private final Figures figures = new Figures(UnitSystem.METRIC);
    private final DynoAssessor flagging =
            new DynoAssessor(new Correction(), new TradeConstants().pulls(Judgement.own()));

    private final OperatingSystemMXBean computer = ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);

    private Growth() {}

    public static void main(String[] arguments) throws Exception {
        Growth growth = new Growth();
        growth.print("open", MANY, folder -> () -> growth.tools.desk().open(folder));
        growth.print("flag", MANY, folder -> {
            OpenSession open = growth.tools.desk().open(folder);
            return () -> growth.flagged(open);
        });
        growth.print("judge", SOME, folder -> {
            OpenSession open = growth.tools.desk().open(folder);
            return () -> growth.tools.appraise().of(open, growth.figures);
        });
        growth.print("report", SOME, folder -> {
            Appraisal appraisal = growth.tools.appraise().of(growth.tools.desk().open(folder), growth.figures);
            return () -> growth.tools.makeReport().text(appraisal);
        });
    }

    private Object flagged(OpenSession open) {
        Session session = open.session();
        return flagging.assess(
                session.days(), session.setups(), open.traces(), Standard.NONE, Optional.empty(), figures);
    }

    /** Work on the session in a folder, all made ready. */
    @FunctionalInterface
    private interface Ready {
        Callable<?> on(Path folder) throws Exception;
    }

    private void print(String what, List<Integer> numbers, Ready ready) throws Exception {
        SimpleRegression fit = new SimpleRegression();
        for (int pulls : numbers) {
            double seconds = best(ready.on(new LargeSession(pulls, SAMPLES).made()));
            fit.addData(Math.log(pulls), Math.log(seconds));
            out.printf("%-6s %6d pulls  %8.3f s%n", what, pulls, seconds);
        }
        out.printf("%-6s exponent %.2f%n", what, fit.getSlope());
    }

    /** Processor time, which other programs disturb least; the shortest of several, after the compiler has done its part. */
    private double best(Callable<?> work) throws Exception {
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i < TIMES; i++) {
            long begins = computer.getProcessCpuTime();
            work.call();
            best = Math.min(best, (computer.getProcessCpuTime() - begins) / 1e9);
        }
        return best;
    }
}
