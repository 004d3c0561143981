package org.pullproof.ui.start;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.SentenceFlow;
import org.pullproof.ui.parts.SheetStyle;
import org.pullproof.units.Sentence;

/** Three short hints under the demo, and the way to the own car. */
public final class DemoHints extends HBox {
    private static final List<Sentence> HINTS = List.of(
            new Sentence("**Ctrl 1 to 6** go along the job; each sheet answers its question first."),
            new Sentence("**Next step**, on the right, is the one thing to do now, with its cautions."),
            new Sentence(
                    "**Ctrl F** finds everything, **F1** explains the sheet. Change what you like, this is a copy."));

    /**
     * @param ownCar begins with the own car
     * @param shut takes the hints away for good
     */
    public DemoHints(Runnable ownCar, Runnable shut) {
        super(20);
        getStyleClass().add("demo-hints");
        SheetStyle.onPage(this);
        HINTS.forEach(hint -> {
            SentenceFlow words = SentenceFlow.of(hint, "hint");
            words.setPrefWidth(0);
            HBox.setHgrow(words, Priority.ALWAYS);
            getChildren().add(words);
        });
        Button own = Actions.plain("Start with my car", "Ctrl N");
        own.setId("own-car");
        own.setOnAction(pressed -> ownCar.run());
        Button close = Actions.plain("Don't show again", "");
        close.setId("shut-hints");
        close.setOnAction(pressed -> {
            setVisible(false);
            shut.run();
        });
        getChildren().addAll(own, close);
        setAlignment(Pos.CENTER_LEFT);
        setFillHeight(false);
        managedProperty().bind(visibleProperty());
    }
}
