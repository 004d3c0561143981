package org.pullproof.ui.health;

import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.pullproof.engine.EngineProfile;
import org.pullproof.health.Reading;
import org.pullproof.health.ReadingSheet;

/** The rules of {@link ReadingSheet}, asked with a table of one row. */
public final class SheetReadingRules implements ReadingRules {
    private final Supplier<EngineProfile> engine;
    private final Clock clock;

    public SheetReadingRules(Supplier<EngineProfile> engine, Clock clock) {
        this.engine = engine;
        this.clock = clock;
    }

    @Override
    public Reading read(Map<String, String> cells) {
        LocalDateTime now = LocalDateTime.now(clock).withNano(0);
        List<String> columns = List.copyOf(cells.keySet());
        List<String> row =
                columns.stream().map(column -> cells.getOrDefault(column, "")).toList();
        ReadingSheet.Taken taken = new ReadingSheet(engine.get(), now)
                .read(List.of(new ReadingSheet.Row(1, columns), new ReadingSheet.Row(2, row)));
        taken.problems().stream().findFirst().ifPresent(problem -> {
            throw new RefusedEntry(problem.column(), problem.message());
        });
        return taken.readings().get(0);
    }
}
