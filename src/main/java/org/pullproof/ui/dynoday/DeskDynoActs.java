package org.pullproof.ui.dynoday;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pullproof.app.AddPulls;
import org.pullproof.app.ExcludePull;
import org.pullproof.app.ForeignFiles;
import org.pullproof.app.ForeignTable;
import org.pullproof.app.OpenSession;
import org.pullproof.app.RecordAir;
import org.pullproof.app.SetFacts;
import org.pullproof.dyno.ColumnChoice;
import org.pullproof.dyno.Pull;
import org.pullproof.files.BadFileException;
import org.pullproof.session.Problem;
import org.pullproof.ui.shell.Act;
import org.pullproof.weather.AirReading;

/** The acts of a dyno day, done by the same classes as on the command line. */
public final class DeskDynoActs implements DynoActs {
    private final RecordAir recordAir;
    private final AddPulls addPulls;
    private final ForeignFiles foreign;
    private final ExcludePull excludePull;
    private final SetFacts setFacts;

    public DeskDynoActs(
            RecordAir recordAir, AddPulls addPulls, ForeignFiles foreign, ExcludePull excludePull, SetFacts setFacts) {
        this.recordAir = recordAir;
        this.addPulls = addPulls;
        this.foreign = foreign;
        this.excludePull = excludePull;
        this.setFacts = setFacts;
    }

    @Override
    public Act recordAir(AirReading reading) {
        return open -> recordAir.record(open, reading).open();
    }

    @Override
    public Act addPulls(Taking taking, Heard heard) {
        return open -> {
            Optional<ForeignTable> told = taking.columns().isEmpty() ? Optional.empty() : foreign.first(taking.files());
            AddPulls.Outcome outcome = added(open, taking, heard);
            List<Problem> problems = new ArrayList<>(outcome.problems());
            told.ifPresent(table -> problems.addAll(remembered(table, taking.columns())));
            heard.left(problems);
            return outcome.open();
        };
    }

    /** What was told of a table; that it could not be remembered stops nothing and is said. */
    private List<Problem> remembered(ForeignTable table, List<ColumnChoice> columns) {
        try {
            foreign.remember(table.look(), columns);
            return List.of();
        } catch (BadFileException unwritable) {
            return unwritable.problems();
        }
    }

    /** By their headers, else by what was told of such tables before; what then still cannot be read is asked for. */
    private AddPulls.Outcome added(OpenSession open, Taking taking, Heard heard) throws BadFileException {
        try {
            return addPulls.add(open, wanted(taking, taking.columns()), heard);
        } catch (BadFileException unread) {
            Optional<ForeignTable> table =
                    taking.columns().isEmpty() ? foreign.first(taking.files()) : Optional.empty();
            Optional<List<ColumnChoice>> known = table.map(ForeignTable::look).flatMap(foreign::known);
            if (known.isPresent()) {
                return addPulls.add(open, wanted(taking, known.get()), heard);
            }
            table.ifPresent(heard::foreign);
            throw unread;
        }
    }

    private static AddPulls.Wanted wanted(Taking taking, List<ColumnChoice> columns) {
        return new AddPulls.Wanted(
                taking.files(), Optional.of(taking.setup()), Optional.empty(), Map.of(), columns, Optional.empty());
    }

    @Override
    public Act exclude(Pull pull, String reason) {
        return open -> excludePull.exclude(open, pull.id(), reason);
    }

    @Override
    public Act include(Pull pull) {
        return open -> excludePull.countAgain(open, pull.id());
    }

    @Override
    public Act tellStated(String words) {
        return open -> setFacts.set(open, Map.of(SetFacts.SELLER_FIGURE, words));
    }
}
