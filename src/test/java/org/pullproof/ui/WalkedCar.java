package org.pullproof.ui;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javafx.stage.Stage;
import org.pullproof.advice.Cautions;
import org.pullproof.app.OpenSession;
import org.pullproof.app.Toolbox;
import org.pullproof.files.TradeFiles;
import org.pullproof.session.Session;
import org.pullproof.testing.Tools;
import org.pullproof.ui.parts.Fonts;
import org.pullproof.units.Figures;
import org.pullproof.units.UnitSystem;

/** The window with nothing open yet, a folder for a car of one's own, and a stand-in that hands in its invented pull files. */
final class WalkedCar {
    private final Deque<Path> pulls = new ArrayDeque<>();
    private final Path home;
    private final Toolbox tools;

    WalkedCar(Stage stage) throws IOException {
        home = Files.createTempDirectory("pullproof-walk");
        tools = Tools.with(home);
        // the tests share one stage, which keeps the size another test gave it
        stage.setWidth(1280);
        stage.setHeight(800);
        Fonts.load();
        TradeFiles trade = new TradeFiles();
        Cautions cautions = new Cautions(trade.cautions(), trade.lastCaution());
        new ProgramWindow(tools, cautions, stage, () -> List.of(pulls.remove()), Clock.system(ZoneOffset.UTC))
                .show(Optional.empty());
    }

    Path folder() {
        return home.resolve("barn-find");
    }

    private OpenSession open() {
        try {
            return tools.desk().open(folder());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** What is on the disk. */
    Session kept() {
        return open().session();
    }

    long pullsKept() {
        return kept().days().stream().mapToLong(day -> day.pulls().size()).sum();
    }

    /** The setup the car is in now. */
    String present() {
        return kept().present().name();
    }

    /** The report of what is on the disk, as text. */
    String report() {
        return tools.makeReport().text(tools.appraise().of(open(), new Figures(UnitSystem.US)));
    }

    /** Lays the next pull file ready: an invented in-line four, a smooth curve, times a level. */
    void layReady(int number, double level) {
        double ofThisPull = level * (1 + 0.001 * number % 0.003);
        String rows = IntStream.rangeClosed(0, 80)
                .mapToObj(step -> 2000 + 50 * step)
                .map(rpm -> String.format(
                        Locale.ROOT, "%d,%.3f", rpm, ofThisPull * (40 + 60 * Math.sin((rpm - 1500) / 3200.0))))
                .collect(Collectors.joining("\n", "rpm,power hp\n", "\n"));
        try {
            pulls.add(Files.writeString(home.resolve("pull-" + number + ".csv"), rows));
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }
}
