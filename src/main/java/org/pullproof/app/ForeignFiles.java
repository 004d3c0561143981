package org.pullproof.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.pullproof.dyno.ColumnChoice;
import org.pullproof.dyno.TableLook;
import org.pullproof.dyno.TableRow;
import org.pullproof.files.BadFileException;
import org.pullproof.files.LargeFile;
import org.pullproof.files.PreferenceFile;
import org.pullproof.files.Preferences;
import org.pullproof.files.Preferences.KnownTable;

/**
 * Finds among files the one whose columns have to be told, and remembers in the user's preferences what was told of tables with the
 * same headers. The command line never looks there: a script says everything itself.
 */
public final class ForeignFiles {
    private final PullFileReader reader;
    private final PreferenceFile preferences;

    public ForeignFiles(PullFileReader reader, PreferenceFile preferences) {
        this.reader = reader;
        this.preferences = preferences;
    }

    /** The first of the files that is a table with headers but cannot be read as it stands. */
    public Optional<ForeignTable> first(List<Path> files) {
        return files.stream().map(this::look).flatMap(Optional::stream).findFirst();
    }

    private Optional<ForeignTable> look(Path file) {
        try {
            List<TableRow> rows =
                    reader.head(file.toString(), LargeFile.at(file).bytes(), ForeignTable.MOST_ROWS);
            return TableLook.of(rows).flatMap(look -> unread(file, rows, look));
        } catch (BadFileException noTable) {
            return Optional.empty();
        }
    }

    private static Optional<ForeignTable> unread(Path file, List<TableRow> rows, TableLook look) {
        ForeignTable untold = new ForeignTable(file, rows, look, "");
        return untold.preview(List.of()).problem().map(problem -> new ForeignTable(file, rows, look, problem));
    }

    /** What was told of tables with these headers, if that was ever done. */
    public Optional<List<ColumnChoice>> known(TableLook look) {
        return preferences.read().preferences().tables().stream()
                .filter(table -> table.shape().equals(look.shape()))
                .map(KnownTable::columns)
                .findFirst();
    }

    /**
     * Remembers what was told.
     *
     * @throws BadFileException if the preferences cannot be written
     */
    public void remember(TableLook look, List<ColumnChoice> columns) throws BadFileException {
        Preferences before = preferences.read().preferences();
        preferences.write(before.withTable(new KnownTable(look.shape(), columns)));
    }
}
