package org.pullproof.ui.parts;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Pane;
import javafx.scene.paint.Color;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import org.pullproof.drawing.ChartLook;
import org.pullproof.drawing.ChartPanels;
import org.pullproof.drawing.Crosshair;
import org.pullproof.drawing.PowerChart;
import org.pullproof.dyno.DynoFindings;
import org.pullproof.dyno.PowerCurve;
import org.pullproof.dyno.Pull;
import org.pullproof.dyno.PullFile;
import org.pullproof.dyno.PullFindings;
import org.pullproof.dyno.Trace;
import org.pullproof.engine.Setup;
import org.pullproof.units.Figures;
import org.pullproof.units.Sentence;
import org.pullproof.units.UnitSystem;
import org.pullproof.weather.Factor;
import org.pullproof.weather.Standard;

/** Redrawing 50 pulls of 1,000 points each in all panels, against stroking the same points on a bare canvas. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(
        value = 1,
        jvmArgsAppend = {"-Dglass.platform=Monocle", "-Dmonocle.platform=Headless", "-Dprism.order=sw"})
public class RedrawBenchmark {
    private static final int PULLS = 50;
    private static final int POINTS = 1000;
    private static final double WIDTH = 640;
    private static final double HEIGHT = 540;

    private final PowerChart.Content content = content();
    private ChartPanels panels = ChartPanels.of(content, ChartLook.whole());
    private DrawingView view = new DrawingView();
    private Canvas bare = new Canvas(WIDTH, HEIGHT);
    private WritableImage image = new WritableImage((int) WIDTH, (int) HEIGHT);

    @org.openjdk.jmh.annotations.Setup
    public void startTheScreen() throws Exception {
        CountDownLatch started = new CountDownLatch(1);
        Platform.startup(started::countDown);
        started.await();
        onScreen(() -> {
            view = new DrawingView();
            Scene scene = new Scene(new Pane(view), WIDTH, HEIGHT);
            view.resize(WIDTH, HEIGHT);
            bare = new Canvas(WIDTH, HEIGHT);
            return scene;
        });
    }

    @TearDown(Level.Trial)
    public void stop() {
        Platform.exit();
    }

    /** The view as the sheet uses it, painted to the last pixel. */
    @Benchmark
    public WritableImage chart() throws Exception {
        return onScreen(() -> {
            view.show((width, height) -> PowerChart.of(panels, width, height));
            view.layout();
            return view.snapshot(null, image);
        });
    }

    /** The same with the figures of the panels computed anew, as after an edit. */
    @Benchmark
    public WritableImage chartAfterAnEdit() throws Exception {
        return onScreen(() -> {
            panels = ChartPanels.of(content, ChartLook.whole());
            view.show((width, height) -> PowerChart.of(panels, width, height));
            view.layout();
            return view.snapshot(null, image);
        });
    }

    /** What a mouse move redraws: the crosshair in its own layer, painted to the last pixel; a screen shows 60 pictures a second. */
    @Benchmark
    public WritableImage crosshair() throws Exception {
        return onScreen(() -> {
            view.show((width, height) -> Crosshair.at(panels, 4000, width, height));
            view.layout();
            return view.snapshot(null, image);
        });
    }

    /** The same points in lines of the same width, twice, for power and torque. */
    @Benchmark
    public WritableImage bareStrokes() throws Exception {
        return onScreen(() -> {
            GraphicsContext pen = bare.getGraphicsContext2D();
            pen.clearRect(0, 0, WIDTH, HEIGHT);
            pen.setStroke(Color.GRAY);
            pen.setLineWidth(0.6);
            for (int panel = 0; panel < 2; panel++) {
                for (int pull = 0; pull < PULLS; pull++) {
                    stroke(pen, pull, 40 + 260 * panel);
                }
            }
            return bare.snapshot(null, image);
        });
    }

    private static void stroke(GraphicsContext pen, int pull, double top) {
        pen.beginPath();
        for (int i = 0; i < POINTS; i++) {
            double x = 44 + 500.0 * i / POINTS;
            double y = top + 200 * (1 - share(i) * (0.9 + 0.002 * pull));
            if (i == 0) {
                pen.moveTo(x, y);
            } else {
                pen.lineTo(x, y);
            }
        }
        pen.stroke();
    }

    private static double share(int point) {
        return 1 - Math.pow((point - 600) / 900.0, 2);
    }

    private static <T> T onScreen(Callable<T> work) throws Exception {
        FutureTask<T> task = new FutureTask<>(work);
        Platform.runLater(task);
        return task.get();
    }

    private static PowerChart.Content content() {
        List<PullFindings> pulls = new ArrayList<>();
        for (int i = 0; i < PULLS; i++) {
            pulls.add(pull(i));
        }
        DynoFindings findings = new DynoFindings(
                new Sentence(""),
                pulls,
                List.of(),
                OptionalInt.of(4000),
                OptionalInt.of(9000),
                false,
                Optional.empty(),
                Optional.empty());
        return new PowerChart.Content(
                findings,
                List.of(Setup.named("base", "base")),
                Optional.of("base"),
                OptionalDouble.of(0.6),
                Standard.SAE_J1349,
                new Figures(UnitSystem.US));
    }

    private static PullFindings pull(int number) {
        double[] watt = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            watt[i] = 150e3 * share(i) * (0.9 + 0.002 * number);
        }
        Pull pull = new Pull(
                "base",
                number + 1,
                new PullFile("p", "p", "0".repeat(64)),
                LocalDateTime.of(2026, 6, 14, 9, 0),
                List.of(),
                Optional.empty(),
                Optional.empty());
        return new PullFindings(
                pull,
                pull.id(),
                Trace.of(new double[] {2000, 11990}, new double[] {1, 2}),
                PowerCurve.of(2000, watt),
                Optional.empty(),
                Optional.of(new Factor(Standard.SAE_J1349, 1, List.of(), List.of())),
                150,
                6000,
                OptionalDouble.empty(),
                List.of());
    }
}
