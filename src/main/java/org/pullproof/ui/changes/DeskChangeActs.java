package org.pullproof.ui.changes;

import org.pullproof.app.AmendChange;
import org.pullproof.app.AmendChange.Amendment;
import org.pullproof.app.ChangeSetup;
import org.pullproof.app.ChangeSetup.Wanted;
import org.pullproof.ui.shell.Act;

/** Records changes on the disk. */
public final class DeskChangeActs implements ChangeActs {
    private final ChangeSetup change;
    private final AmendChange amend;

    public DeskChangeActs(ChangeSetup change, AmendChange amend) {
        this.change = change;
        this.amend = amend;
    }

    @Override
    public Act change(Wanted wanted) {
        return open -> change.to(open, wanted);
    }

    @Override
    public Act amend(String setup, Amendment amendment) {
        return open -> amend.madeInto(open, setup, amendment);
    }
}
