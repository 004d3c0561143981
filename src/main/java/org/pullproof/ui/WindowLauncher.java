package org.pullproof.ui;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import javafx.application.Platform;
import javafx.stage.Stage;
import org.pullproof.advice.Cautions;
import org.pullproof.app.Toolbox;
import org.pullproof.app.Window;
import org.pullproof.ui.dynoday.WindowFileChooser;

/** Shows the window once JavaFX has started. */
public final class WindowLauncher implements Window {
    private final ToolkitStart toolkit;
    private final Cautions cautions;
    private final Clock clock;

    /**
     * @param toolkit begun
     */
    public WindowLauncher(ToolkitStart toolkit, Cautions cautions, Clock clock) {
        this.toolkit = toolkit;
        this.cautions = cautions;
        this.clock = clock;
    }

    @Override
    public void open(Toolbox tools, Optional<Path> session) {
        toolkit.await();
        CountDownLatch closed = new CountDownLatch(1);
        Platform.runLater(() -> {
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
