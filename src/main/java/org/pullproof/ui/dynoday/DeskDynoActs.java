package org.pullproof.ui.dynoday;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.pullproof.app.AddPulls;
import org.pullproof.app.ExcludePull;
import org.pullproof.app.RecordAir;
import org.pullproof.app.SetFacts;
import org.pullproof.dyno.Pull;
import org.pullproof.session.Problem;
import org.pullproof.ui.shell.Act;
import org.pullproof.weather.AirReading;

/** The acts of a dyno day, done by the same classes as on the command line. */
public final class DeskDynoActs implements DynoActs {
    private final RecordAir recordAir;
    private final AddPulls addPulls;
    private final ExcludePull excludePull;
    private final SetFacts setFacts;

    public DeskDynoActs(RecordAir recordAir, AddPulls addPulls, ExcludePull excludePull, SetFacts setFacts) {
        this.recordAir = recordAir;
        this.addPulls = addPulls;
        this.excludePull = excludePull;
        this.setFacts = setFacts;
    }

    @Override
    public Act recordAir(AirReading reading) {
        return open -> recordAir.record(open, reading).open();
    }

    @Override
    public Act addPulls(List<Path> files, String setup, Consumer<List<Problem>> left) {
        return open -> {
            AddPulls.Outcome outcome = addPulls.add(open, AddPulls.Wanted.of(files, Optional.of(setup)));
            left.accept(outcome.problems());
            return outcome.open();
        };
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
