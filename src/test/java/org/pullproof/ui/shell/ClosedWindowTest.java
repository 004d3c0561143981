package org.pullproof.ui.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.ref.WeakReference;
import java.util.stream.IntStream;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.pullproof.HeadlessFx;
import org.pullproof.advice.Stage;
import org.pullproof.ui.SheetFixture;
import org.pullproof.ui.UiFixture;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/** The look of the program lives longer than a session, and must not hold the window of one that was closed. */
@ExtendWith({HeadlessFx.class, ApplicationExtension.class})
class ClosedWindowTest {
    private static final int COLLECTIONS = 20;

    private record PlainSheet(Stage stage, Node node) implements Sheet {}

    /** Shows a session, closes it and returns what would still lead to its window. */
    private static WeakReference<MainView> closed(FxRobot robot, SessionViewModel model) {
        MainView[] view = new MainView[1];
        robot.interact(() -> {
            view[0] = new MainView(model, stage -> new PlainSheet(stage, new Region()), UiFixture.shellActs());
            model.look().otherLight();
            model.close();
        });
        return new WeakReference<>(view[0]);
    }

    private static WeakReference<MainView> closed(FxRobot robot, Look[] kept) {
        SessionViewModel model = SheetFixture.model(UiFixture.open(), UiFixture::appraise);
        kept[0] = model.look();
        return closed(robot, model);
    }

    @Test
    void aClosedSessionIsNotHeldByTheLook(FxRobot robot) {
        Look[] look = new Look[1];
        WeakReference<MainView> window = closed(robot, look);
        IntStream.range(0, COLLECTIONS).takeWhile(time -> window.get() != null).forEach(time -> System.gc());
        assertThat(window.get()).isNull();
        assertThat(look[0].nightProperty().get()).isTrue();
    }
}
