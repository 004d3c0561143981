package org.pullproof.ui.changes;

import org.pullproof.app.AmendChange;
import org.pullproof.app.ChangeSetup;
import org.pullproof.session.Edit;
import org.pullproof.ui.NoPictures;
import org.pullproof.ui.SheetFixture;
import org.pullproof.ui.UiFixture;
import org.pullproof.ui.shell.Act;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.ui.shell.Sheet;

/** The sheet Changes for tests; its changes are made in the document and not on the disk. */
public final class ChangesPictures {
    private ChangesPictures() {}

    public static Sheet sheet(SessionViewModel session) {
        return new ChangesSheet(model(session), SheetFixture.cautions().of("change"), new NoPictures());
    }

    static ChangesViewModel model(SessionViewModel session) {
        return new ChangesViewModel(session, new InTheDocument(), SheetFixture.CLOCK);
    }

    /** Makes its changes in the document alone. */
    private static final class InTheDocument implements ChangeActs {
        @Override
        public Act change(ChangeSetup.Wanted wanted) {
            return open -> UiFixture.after(
                    open, new Edit("Change to " + wanted.name(), now -> ChangeSetup.applied(now, wanted)));
        }

        @Override
        public Act amend(String setup, AmendChange.Amendment amendment) {
            return open ->
                    UiFixture.after(open, new Edit("Put right", now -> AmendChange.applied(now, setup, amendment)));
        }
    }
}
