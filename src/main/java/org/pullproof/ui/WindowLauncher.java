package org.pullproof.ui;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;
import javafx.stage.Stage;
import org.pullproof.advice.Cautions;
import org.pullproof.app.Toolbox;
import org.pullproof.app.Window;
import org.pullproof.ui.dynoday.WindowFileChooser;
import org.pullproof.ui.parts.Fonts;

/** Starts JavaFX and shows the window. */
public final class WindowLauncher implements Window {
    /** Kept, because a logger that nobody holds forgets its level: JavaFX warns of the class path, on which it works. */
    private final Logger javafx = Logger.getLogger("javafx");

    private final Cautions cautions;
    private final Clock clock;

    public WindowLauncher(Cautions cautions, Clock clock) {
        this.cautions = cautions;
        this.clock = clock;
    }

    @Override
    public void open(Toolbox tools, Optional<Path> session) {
        javafx.setLevel(Level.SEVERE);
        CountDownLatch closed = new CountDownLatch(1);
        Platform.startup(() -> {
            Fonts.load();
            Stage stage = new Stage();
            ProgramWindow window = new ProgramWindow(tools, cautions, stage, new WindowFileChooser(() -> stage), clock);
            stage.showingProperty().addListener((of, before, showing) -> {
                if (!showing) {
                    closed.countDown();
                }
            });
            window.show(session);
        });
        await(closed);
        Platform.exit();
    }

    private static void await(CountDownLatch closed) {
        try {
            closed.await();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
