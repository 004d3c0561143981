package org.pullproof.testing;

import java.util.List;
import java.util.Optional;
import org.pullproof.advice.LoadGate;
import org.pullproof.files.TradeFiles;

/** Gates before the first pull, for tests that ask about something else. */
public final class Gates {
    private Gates() {}

    /** A gate with no point, so nothing stands in the way. */
    public static LoadGate open() {
        return new LoadGate(Optional.empty(), true, List.of(), List.of(), new TradeFiles().doNotRun());
    }
}
