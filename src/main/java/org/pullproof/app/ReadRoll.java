package org.pullproof.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.pullproof.dyno.ColumnChoice;
import org.pullproof.dyno.Drag;
import org.pullproof.dyno.Drum;
import org.pullproof.dyno.DrumRun;
import org.pullproof.dyno.RollRows;
import org.pullproof.dyno.TableRow;
import org.pullproof.dyno.UnreadablePullException;
import org.pullproof.files.BadFileException;
import org.pullproof.files.FileBytes;
import org.pullproof.files.IncomingFile;

/** Tells what follows from files of a roll's or a car's speed against time; keeps nothing. */
public final class ReadRoll {
    private final PullFileReader reader;

    public ReadRoll(PullFileReader reader) {
        this.reader = reader;
    }

    /**
     * Power from a run on an inertia drum.
     *
     * @param run file of the run
     * @param coastDown file of the roll's own coast-down, with no car on it
     * @throws BadFileException naming the file and the place in it
     */
    public DrumRun run(Path run, Optional<Path> coastDown, Drum drum, List<ColumnChoice> columns)
            throws BadFileException {
        Optional<Drag> loss = coastDown.isPresent()
                ? Optional.of(told(coastDown.get(), rows -> RollRows.rollLoss(rows, columns, drum)))
                : Optional.empty();
        return told(run, rows -> DrumRun.read(rows, columns, drum, loss));
    }

    /**
     * What slows a car down.
     *
     * @param mass in kg, with what its turning parts add to it
     * @throws BadFileException naming the file and the place in it
     */
    public Drag car(Path coastDown, double mass, List<ColumnChoice> columns) throws BadFileException {
        return told(coastDown, rows -> RollRows.carDrag(rows, columns, mass));
    }

    @FunctionalInterface
    private interface Telling<T> {
        T of(List<TableRow> rows) throws UnreadablePullException;
    }

    private <T> T told(Path file, Telling<T> telling) throws BadFileException {
        try {
            return telling.of(reader.head(
                    file.toString(), FileBytes.of(IncomingFile.read(file).bytes()), Integer.MAX_VALUE));
        } catch (UnreadablePullException unreadable) {
            throw new BadFileException(file.toString(), unreadable.place(), unreadable.sentence());
        }
    }
}
