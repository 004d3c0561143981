package org.pullproof.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pullproof.files.BadFileException;
import org.pullproof.session.Edit;
import org.pullproof.session.Session;
import org.pullproof.tuneup.PartRecord;
import org.pullproof.tuneup.PartRecord.Fate;
import org.pullproof.worth.MoneyBook;
import org.pullproof.worth.Spending;

/** Keeps what the tune-up uses up: still to buy, bought, or the old one kept. What was paid stands among the money spent. */
public final class RecordParts {
    private final SessionDesk desk;

    public RecordParts(SessionDesk desk) {
        this.desk = desk;
    }

    /** Replaces what was told of one part, and its money. */
    public OpenSession record(OpenSession open, PartRecord part) throws BadFileException {
        String name = Character.toUpperCase(part.fate().words().charAt(0))
                + part.fate().words().substring(1);
        return desk.edit(
                open, new Edit(name + ": " + part.part(), session -> told(session, part.part(), Optional.of(part))));
    }

    /** Forgets what was told of one part, and its money. */
    public OpenSession forget(OpenSession open, String part) throws BadFileException {
        return desk.edit(open, new Edit("Forget " + part, session -> told(session, part, Optional.empty())));
    }

    private static Session told(Session session, String name, Optional<PartRecord> part) {
        List<Spending> spent = new ArrayList<>(session.money().spent());
        session.tuneUp().bench().part(name).flatMap(RecordParts::spending).ifPresent(spent::remove);
        part.flatMap(RecordParts::spending).ifPresent(spent::add);
        var bench = session.tuneUp().bench();
        return session.withTuneUp(
                        session.tuneUp().withBench(part.map(bench::withPart).orElseGet(() -> bench.withoutPart(name))))
                .withMoney(new MoneyBook(spent, session.money().options()));
    }

    private static Optional<Spending> spending(PartRecord part) {
        return part.price()
                .filter(paid -> part.fate() == Fate.BOUGHT && paid.value() != 0)
                .map(paid -> new Spending(part.part(), paid, part.told()));
    }
}
