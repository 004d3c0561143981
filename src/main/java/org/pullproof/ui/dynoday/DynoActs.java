package org.pullproof.ui.dynoday;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.pullproof.dyno.Pull;
import org.pullproof.session.Problem;
import org.pullproof.ui.shell.Act;
import org.pullproof.weather.AirReading;

/** What the sheet Dyno day does to the session. */
public interface DynoActs {
    /** Keeps a reading of the air. */
    Act recordAir(AirReading reading);

    /**
     * Takes in pull files in the order given: all or none.
     *
     * @param setup name of the setup they were made on; one not known yet is made
     * @param left receives, away from the screen, what was left out or doubtful though the files were taken in
     */
    Act addPulls(List<Path> files, String setup, Consumer<List<Problem>> left);

    /** Takes a pull out of all comparisons; it stays in the session with the reason. */
    Act exclude(Pull pull, String reason);

    /** Counts a pull again. */
    Act include(Pull pull);

    /** Tells a figure of another sheet in its words; empty forgets it. */
    Act tellStated(String words);
}
