package org.pullproof.app;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.pullproof.files.BadFileException;
import org.pullproof.files.CsvFile;
import org.pullproof.files.IncomingFile;
import org.pullproof.health.Reading;
import org.pullproof.health.ReadingSheet;
import org.pullproof.session.Problem;

/** Takes in readings written on a phone or a sheet: all rows of the table or none. */
public final class AddReadings {
    private final SessionDesk desk;
    private final CsvFile csv;
    private final Clock clock;

    /**
     * @param clock tells when the readings are taken in
     */
    public AddReadings(SessionDesk desk, CsvFile csv, Clock clock) {
        this.desk = desk;
        this.csv = csv;
        this.clock = clock;
    }

    /**
     * What came of it: readings without a problem, or problems without a reading.
     *
     * @param open the session with the readings, or as it was
     * @param rows rows of the table below its header
     * @param added the readings, in the order of the rows
     * @param problems every row that is wrong, by file, row and column
     */
    public record Outcome(OpenSession open, int rows, List<Reading> added, List<Problem> problems) {
        public Outcome {
            added = List.copyOf(added);
            problems = List.copyOf(problems);
        }
    }

    /**
     * Reads the table and keeps its readings.
     *
     * @throws BadFileException if the session could not be written
     */
    public Outcome add(OpenSession open, Path file) throws BadFileException {
        List<ReadingSheet.Row> rows;
        try {
            rows = rows(file);
        } catch (BadFileException unreadable) {
            return new Outcome(open, 0, List.of(), unreadable.problems());
        }
        LocalDateTime now = LocalDateTime.now(clock).truncatedTo(ChronoUnit.SECONDS);
        ReadingSheet.Taken taken = new ReadingSheet(open.session().profile(), now).read(rows);
        int below = Math.max(0, rows.size() - 1);
        return taken.problems().isEmpty()
                ? new Outcome(kept(open, taken.readings()), below, taken.readings(), List.of())
                : new Outcome(open, below, List.of(), problems(file, taken.problems()));
    }

    private OpenSession kept(OpenSession open, List<Reading> readings) throws BadFileException {
        return desk.edit(open, RecordReading.adding(readings));
    }

    private List<ReadingSheet.Row> rows(Path file) throws BadFileException {
        return csv.rows(file.toString(), IncomingFile.read(file).bytes()).stream()
                .map(row -> new ReadingSheet.Row(row.line(), row.cells()))
                .toList();
    }

    private static List<Problem> problems(Path file, List<ReadingSheet.Problem> problems) {
        return problems.stream()
                .map(problem -> new Problem(file.toString(), place(problem), problem.message()))
                .toList();
    }

    private static String place(ReadingSheet.Problem problem) {
        return problem.column().isEmpty()
                ? "row " + problem.line()
                : "row " + problem.line() + ", column " + problem.column();
    }
}
