package org.pullproof.ui.dynoday;

import java.nio.file.Path;
import java.util.List;
import org.pullproof.app.ForeignTable;
import org.pullproof.app.Progress;
import org.pullproof.dyno.ColumnChoice;
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
     * @param heard is told, away from the screen, what comes of it
     */
    Act addPulls(Taking taking, Heard heard);

    /**
     * What is to be taken in.
     *
     * @param files in the order of the pulls
     * @param setup name of the setup they were made on; one not known yet is made
     * @param columns what a person said of their columns; empty if their headers, or what was told of such tables before, say it
     */
    record Taking(List<Path> files, String setup, List<ColumnChoice> columns) {
        public Taking {
            files = List.copyOf(files);
            columns = List.copyOf(columns);
        }
    }

    /** Hears, away from the screen, how taking in goes. */
    interface Heard extends Progress {
        /** What was left out or doubtful though the files were taken in. */
        void left(List<Problem> problems);

        /** A file whose columns have to be told; nothing was taken in. */
        void foreign(ForeignTable table);
    }

    /** Takes a pull out of all comparisons; it stays in the session with the reason. */
    Act exclude(Pull pull, String reason);

    /** Counts a pull again. */
    Act include(Pull pull);

    /** Tells a figure of another sheet in its words; empty forgets it. */
    Act tellStated(String words);
}
