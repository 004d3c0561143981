package org.pullproof.ui.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.pullproof.HeadlessFx;
import org.pullproof.advice.Stage;
import org.pullproof.ui.SheetFixture;
import org.pullproof.ui.UiFixture;
import org.pullproof.ui.parts.Fonts;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** A sheet costs time to make, so the window begins with the one it shows. */
@ExtendWith({HeadlessFx.class, ApplicationExtension.class})
class SheetsWhenLookedAtTest {
    private final List<Stage> made = new ArrayList<>();
    private MainView view;

    private record PlainSheet(Stage stage, Node node) implements Sheet {}

    private Sheet make(Stage stage) {
        made.add(stage);
        return new PlainSheet(stage, new Label(stage.words()));
    }

    @Start
    void open(javafx.stage.Stage stage) {
        Fonts.load();
        view = new MainView(
                SheetFixture.model(UiFixture.open(), UiFixture::appraise), this::make, UiFixture.shellActs());
        stage.setScene(new Scene(view, 1280, 800));
        stage.show();
    }

    @Test
    void onlyTheSheetShownIsMade() {
        assertThat(made).containsExactly(Stage.CAR);
    }

    @Test
    void aSheetIsMadeOnceHoweverOftenItIsLookedAt() {
        onFx(() -> view.open(Stage.CHANGES));
        onFx(() -> view.open(Stage.CAR));
        onFx(() -> view.open(Stage.CHANGES));
        assertThat(made).containsExactly(Stage.CAR, Stage.CHANGES);
    }

    @Test
    void theOthersAreMadeAfterwardsInTheOrderOfTheJob() {
        onFx(view::makeOtherSheets);
        assertThat(made).containsExactly(Stage.values());
    }

    @Test
    void nothingMoreIsMadeOnceTheWindowShowsSomethingElse() {
        onFx(() -> {
            view.getScene().setRoot(new Label("the title sheet"));
            view.makeOtherSheets();
        });
        assertThat(made).containsExactly(Stage.CAR);
    }

    private static void onFx(Runnable act) {
        Platform.runLater(act);
        WaitForAsyncUtils.waitForFxEvents();
    }
}
