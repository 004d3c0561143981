package org.pullproof.ui;

import java.io.IOException;
import java.nio.file.Path;
import org.pullproof.app.ImmediateRunner;
import org.pullproof.app.OpenSession;
import org.pullproof.app.Toolbox;
import org.pullproof.testing.Tools;
import org.pullproof.ui.shell.Look;
import org.pullproof.ui.shell.SessionServices;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.units.UnitSystem;

/** A new session of an in-line four on the disk, worked on with the tools of the program; every act is done at once. */
public final class DeskFixture {
    private final Toolbox tools;
    private final SessionViewModel model;

    public DeskFixture(Path folder) throws IOException {
        tools = Tools.with(folder.resolve("config"));
        OpenSession open =
                tools.desk().create(folder.resolve("car"), "Barn find", SheetFixture.profile("i4-coil-on-plug"));
        Look look = new Look(UnitSystem.US, false);
        SessionServices services = new SessionServices(
                tools.desk()::undo,
                tools.desk()::redo,
                (now, figures) -> tools.appraise().of(now, figures));
        model = new SessionViewModel(
                open,
                tools.appraise().of(open, look.figures()),
                services,
                new ImmediateRunner(),
                look,
                SheetFixture.CLOCK);
    }

    public Toolbox tools() {
        return tools;
    }

    public SessionViewModel model() {
        return model;
    }
}
