package org.pullproof.ui.health;

import java.util.List;
import org.pullproof.health.TestKind;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.ui.shell.Sheet;

/** The sheet Health for pictures. */
public final class HealthPictures {
    private HealthPictures() {}

    public static Sheet sheet(SessionViewModel session, int cylinder) {
        return sheet(session, cylinder, TestKind.COMPRESSION_DRY);
    }

    public static Sheet sheet(SessionViewModel session, int cylinder, TestKind kind) {
        HealthViewModel model = new HealthViewModel(session, HealthViewModelTest.rules(), new TypedReadings());
        model.entry().cylinderProperty().set(cylinder);
        model.entry().testProperty().set(kind);
        return new HealthSheet(
                model,
                test -> List.of(
                        "Fuel and ignition disabled before cranking with the plugs out.",
                        "Park or neutral, wheels chocked, clear of belts and fans."));
    }
}
