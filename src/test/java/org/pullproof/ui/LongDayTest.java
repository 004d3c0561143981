package org.pullproof.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.UnixOperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.lang.management.MemoryUsage;
import java.lang.ref.WeakReference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import javax.management.JMException;
import javax.management.ObjectName;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.pullproof.HeadlessFx;
import org.pullproof.testing.Tools;
import org.pullproof.ui.parts.Fonts;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/**
 * A long day lived fast: sheets, pages, edits taken back, a pull taken in, the session closed and opened again, lap after lap. What the
 * program holds must not grow. Not in every build, for it takes minutes: see {@code docs/robustness.md}.
 */
@Tag("long-life")
@ExtendWith({HeadlessFx.class, ApplicationExtension.class})
class LongDayTest {
    private static final int LAPS = Integer.getInteger("laps", 4);

    /** The toolkit keeps pictures and lines of text it drew, softly: that goes when memory is short. A window has eighty. */
    private static final double MEGABYTES_A_LAP = 20;

    /** A line of the histogram with a class of the program or of its screens: "  12:  34  5678  org.pullproof.app.OpenSession". */
    private static final Pattern OURS =
            Pattern.compile("\\s*\\d+:\\s+(\\d+)\\s+\\d+\\s+(?:org\\.pullproof|javafx\\.scene)\\..*");

    /** A page more or less that was just shown; a window that is not let go of has some hundred thousand. */
    private static final long MORE_OR_LESS = 5_000;

    private static final long PATIENCE_MILLIS = 180_000;

    private final List<WeakReference<Parent>> windows = new ArrayList<>();
    private Stage stage;
    private final WindowRobot keys = new WindowRobot(new FxRobot());

    /** What the program holds at one moment. */
    private record Held(long things, double megabytes, int threads, long files) {}

    @Start
    void start(Stage notUsed) throws Exception {
        // the robot remembers every key that reaches the stage it knows, and with the key the window
        stage = new Stage();
        Path config = Files.createTempDirectory("pullproof-long-day");
        Path pull = Path.of("src/test/resources/org/pullproof/dyno/A1_plain_hp_lbft.csv");
        Fonts.load();
        new ProgramWindow(
                        Tools.with(config),
                        SheetFixture.cautions(),
                        stage,
                        () -> List.of(pull),
                        Clock.system(ZoneOffset.UTC))
                .show(Optional.of(Path.of("demo-sessions", "grey-coupe")));
    }

    @AfterEach
    void close(FxRobot robot) {
        robot.interact(stage::hide);
    }

    @Test
    void nothingGrowsFromTheSecondLapToTheLast(FxRobot robot) throws Exception {
        until(() -> stage.getTitle().startsWith("Grey coup"));
        List<Held> held = new ArrayList<>();
        for (int lap = 1; lap <= LAPS; lap++) {
            lap(robot);
            held.add(held());
        }
        Held second = held.get(1);
        Held last = held.get(LAPS - 1);
        assertThat(last.threads()).as("threads %s", held).isLessThanOrEqualTo(second.threads());
        assertThat(last.files()).as("open files %s", held).isLessThanOrEqualTo(second.files());
        assertThat(last.things()).as("things %s", held).isLessThan(second.things() + MORE_OR_LESS);
        assertThat(last.megabytes() - second.megabytes())
                .as("megabytes %s", held)
                .isLessThan(MEGABYTES_A_LAP * (LAPS - 2));
        assertThat(windows.stream().filter(window -> window.get() != null))
                .as("windows of sessions that were closed")
                .hasSizeLessThanOrEqualTo(1);
    }

    private void lap(FxRobot robot) throws Exception {
        windows.add(new WeakReference<>(stage.getScene().getRoot()));
        keys.control(KeyCode.DIGIT1);
        keys.control(KeyCode.DIGIT2);
        pageAndBack(() -> keys.key(KeyCode.F2));
        pageAndBack(() -> keys.key(KeyCode.F3));
        editAndBack(robot, () -> {
            keys.type("158");
            keys.key(KeyCode.ENTER);
        });
        keys.control(KeyCode.DIGIT3);
        editAndBack(robot, () -> keys.key(KeyCode.END, KeyCode.SPACE));
        keys.control(KeyCode.DIGIT4);
        editAndBack(robot, () -> keys.control(KeyCode.I));
        keys.control(KeyCode.DIGIT5);
        keys.control(KeyCode.DIGIT6);
        pageAndBack(() -> keys.control(KeyCode.J));
        pageAndBack(() -> keys.control(KeyCode.H));
        pageAndBack(() -> keys.control(KeyCode.F));
        pageAndBack(() -> keys.key(KeyCode.F1));
        keys.control(KeyCode.L);
        keys.control(KeyCode.L);
        keys.control(KeyCode.N);
        keys.key(KeyCode.ESCAPE);
        until(() -> stage.getTitle().startsWith("Grey coup"));
    }

    private static void until(BooleanSupplier holds) throws TimeoutException {
        WaitForAsyncUtils.waitFor(PATIENCE_MILLIS, TimeUnit.MILLISECONDS, holds::getAsBoolean);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private void pageAndBack(Runnable open) {
        open.run();
        keys.key(KeyCode.ESCAPE);
    }

    private static void editAndBack(FxRobot robot, Runnable edit) throws Exception {
        String before = undo(robot);
        edit.run();
        until(() -> !undo(robot).equals(before));
        robot.press(KeyCode.CONTROL).type(KeyCode.Z).release(KeyCode.CONTROL);
        until(() -> undo(robot).equals(before));
    }

    private static String undo(FxRobot robot) {
        return WaitForAsyncUtils.waitForAsyncFx(
                PATIENCE_MILLIS,
                () -> robot.lookup(".top-actions .button").queryAllAs(Button.class).stream()
                        .map(Button::getAccessibleText)
                        .filter(words -> words != null && words.startsWith("Undo"))
                        .findFirst()
                        .orElse(""));
    }

    private static Held held() throws JMException {
        long files = ManagementFactory.getOperatingSystemMXBean() instanceof UnixOperatingSystemMXBean unix
                ? unix.getOpenFileDescriptorCount()
                : 0;
        return new Held(
                things(),
                leftByACollection(),
                ManagementFactory.getThreadMXBean().getThreadCount(),
                files);
    }

    /**
     * How many things of the program and of its screens are still held, whatever the caches of the toolkit do. A class histogram counts
     * what a full collection has left.
     */
    private static long things() throws JMException {
        String histogram = String.valueOf(ManagementFactory.getPlatformMBeanServer()
                .invoke(
                        new ObjectName("com.sun.management:type=DiagnosticCommand"),
                        "gcClassHistogram",
                        new Object[] {new String[0]},
                        new String[] {String[].class.getName()}));
        return histogram
                .lines()
                .map(OURS::matcher)
                .filter(Matcher::matches)
                .mapToLong(line -> Long.parseLong(line.group(1)))
                .sum();
    }

    /** What is left in megabytes, not what is in use now: answers are still being computed in the background. */
    private static double leftByACollection() {
        System.gc();
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                        .filter(pool -> pool.getType() == MemoryType.HEAP)
                        .map(MemoryPoolMXBean::getCollectionUsage)
                        .filter(Objects::nonNull)
                        .mapToLong(MemoryUsage::getUsed)
                        .sum()
                / 1e6;
    }
}
