package org.pullproof.ui.dynoday;

import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.Labels;
import org.pullproof.weather.Lookalike;

/** The two ways out at a pressure that looks like an altimeter setting. */
final class WayOut extends VBox {
    private final Label doubt = Labels.wrapped("", "refusal");
    private final Button asSetting = Actions.plain("", "Alt A");
    private final Button height = Actions.plain("It is right, change the height", "Alt H");

    WayOut(Runnable takeAsSetting, Runnable changeHeight) {
        super(6);
        asSetting.setId("as-altimeter");
        asSetting.setOnAction(pressed -> takeAsSetting.run());
        height.setId("change-height");
        height.setOnAction(pressed -> changeHeight.run());
        show(Optional.empty(), false);
    }

    /** Where the pressure is refused its sentence stands at the field already. */
    void show(Optional<Lookalike> likeness, boolean refused) {
        setVisible(likeness.isPresent());
        setManaged(likeness.isPresent());
        likeness.ifPresent(either -> {
            asSetting.setText("Take it as altimeter setting: " + either.stationWords());
            doubt.setText(either.sentence());
            getChildren().setAll(asSetting, height);
            if (!refused) {
                getChildren().add(0, doubt);
            }
        });
    }

    boolean take(String key) {
        if (isVisible()) {
            (key.equals("A") ? asSetting : height).fire();
        }
        return isVisible();
    }
}
