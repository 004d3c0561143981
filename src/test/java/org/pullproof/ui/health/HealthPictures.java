package org.pullproof.ui.health;

import org.pullproof.health.TestKind;
import org.pullproof.ui.SheetFixture;
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
        return new HealthSheet(model, SheetFixture.cautions()::of);
    }
}
