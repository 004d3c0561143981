package org.pullproof.ui.worth;

import org.pullproof.session.Edit;
import org.pullproof.ui.SheetFixture;
import org.pullproof.ui.UiFixture;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.ui.shell.Sheet;

/** The sheet Worth it for tests; money is booked in the document and not on the disk. */
public final class WorthPictures {
    private WorthPictures() {}

    public static Sheet sheet(SessionViewModel session) {
        return new WorthSheet(model(session));
    }

    static WorthViewModel model(SessionViewModel session) {
        return new WorthViewModel(
                session,
                (name, step) ->
                        open -> UiFixture.after(open, new Edit(name, now -> now.withMoney(step.apply(now.money())))),
                SheetFixture.CLOCK);
    }
}
