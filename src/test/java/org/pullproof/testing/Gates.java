package org.pullproof.testing;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.pullproof.advice.DayStanding;
import org.pullproof.advice.LoadGate;
import org.pullproof.dyno.RunList;
import org.pullproof.dyno.StartWindow;
import org.pullproof.files.TradeFiles;

/** A dyno day for tests that ask about something else. */
public final class Gates {
    private Gates() {}

    /** A gate with no point, so nothing stands in the way; no pull to come. */
    public static DayStanding open() {
        return new DayStanding(
                new LoadGate(Optional.empty(), true, List.of(), List.of(), new TradeFiles().doNotRun()),
                new StartWindow(List.of(), Optional.empty(), Duration.ofSeconds(90)),
                new RunList(List.of()));
    }
}
