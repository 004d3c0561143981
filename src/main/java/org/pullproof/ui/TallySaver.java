package org.pullproof.ui;

import org.pullproof.app.MakeTally;
import org.pullproof.health.TestKind;
import org.pullproof.report.TallyKind;
import org.pullproof.session.Session;
import org.pullproof.ui.shell.SessionViewModel;

/** Saves the printed blank of a test. */
final class TallySaver {
    private final MakeTally makeTally;
    private final PaperSaver paper;

    TallySaver(MakeTally makeTally, PaperSaver paper) {
        this.makeTally = makeTally;
        this.paper = paper;
    }

    /** Asks where to; a test without a blank is told at the foot with those there are. */
    void save(SessionViewModel model, TestKind test) {
        TallyKind.of(test)
                .ifPresentOrElse(
                        kind -> save(model, kind),
                        () -> model.say("There is a tally sheet for balance, compression and leak-down, not for "
                                + test.words().toLowerCase(java.util.Locale.ROOT)
                                + ": choose one of these tests first."));
    }

    private void save(SessionViewModel model, TallyKind kind) {
        Session session = model.open().session();
        paper.save(
                model,
                "The tally sheet",
                "tally-" + kind.key(),
                (format, on) -> makeTally.bytes(makeTally.sheet(session, kind), format, on));
    }
}
