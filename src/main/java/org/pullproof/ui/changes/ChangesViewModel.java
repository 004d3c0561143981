package org.pullproof.ui.changes;

import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.pullproof.app.ChangeSetup;
import org.pullproof.changes.ChangeLedger;
import org.pullproof.changes.JudgedChange;
import org.pullproof.drawing.IntervalStrip;
import org.pullproof.engine.Setup;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.units.Figures;
import org.pullproof.units.Money;

/** State and decisions of the sheet Changes: the ledger, and the step to another setup. */
public final class ChangesViewModel {
    private final SessionViewModel model;
    private final ChangeActs acts;
    private final Clock clock;

    public ChangesViewModel(SessionViewModel model, ChangeActs acts, Clock clock) {
        this.model = model;
        this.acts = acts;
        this.clock = clock;
    }

    SessionViewModel model() {
        return model;
    }

    public ChangeLedger ledger() {
        return model.appraisal().changes();
    }

    private Figures figures() {
        return model.appraisal().figures();
    }

    public List<Setup> setups() {
        return model.session().setups();
    }

    /** The changes in order, those without figures last. */
    public List<LedgerRow> rows() {
        return Stream.concat(
                        ledger().changes().stream().map(judged -> LedgerRow.of(judged, figures())),
                        ledger().unjudged().stream().map(LedgerRow::of))
                .toList();
    }

    /** The first setup against the present one, if both have pulls and differ. */
    public Optional<LedgerRow> baselineToNow() {
        return ledger().baselineToNow().map(judged -> LedgerRow.baselineToNow(judged, figures()));
    }

    public double smallestPercent() {
        return model.session().car().smallestDifferencePercent();
    }

    /** Strips over one shared axis. */
    public IntervalStrip strips(double width) {
        List<JudgedChange> all = Stream.concat(ledger().changes().stream(), ledger().baselineToNow().stream())
                .toList();
        return new IntervalStrip(all, smallestPercent(), width);
    }

    /** What the picture of the residuals shows: "%, pull by pull, scatter 0.4 %; filled: base". */
    public String scatterWords() {
        String base = ledger().residuals().stream()
                .findFirst()
                .flatMap(first -> model.session().setup(first.setup()))
                .map(setup -> "; filled: " + setup.name())
                .orElse("");
        String scatter = ledger().repeatabilityPercent().isPresent()
                ? ", scatter " + Figures.percent(ledger().repeatabilityPercent().getAsDouble(), 2)
                : "";
        return "%, pull by pull" + scatter + base;
    }

    /** Names that can be gone back to: every setup but the present one. */
    public List<String> otherSetups() {
        return setups().stream()
                .filter(setup -> !setup.id().equals(model.session().presentSetup()))
                .map(Setup::name)
                .toList();
    }

    /** Whether a name is that of an earlier setup, so that the change goes back to it. */
    public boolean isKnown(String name) {
        return ChangeSetup.find(model.session(), name).isPresent();
    }

    /**
     * Brings the engine into another setup.
     *
     * @param cost what it cost, if typed
     * @throws IllegalArgumentException if no setup is named or it is the present one
     */
    public void change(String setup, String what, Optional<Money> cost) {
        String name = setup.strip();
        if (name.isEmpty()) {
            throw new IllegalArgumentException("Name the setup the engine is in after the change: \"timing 32°\".");
        }
        if (ChangeSetup.find(model.session(), name)
                .filter(model.session().present()::equals)
                .isPresent()) {
            throw new IllegalArgumentException(
                    "The engine is in \"" + name + "\" already; name the setup it is in next.");
        }
        LocalDateTime now = LocalDateTime.now(clock).withNano(0);
        model.act(acts.change(new ChangeSetup.Wanted(name, what.strip(), Map.of(), cost, now, Set.of())));
    }

    /** The ledger as a table, to be copied. */
    public String table() {
        return Stream.concat(rows().stream(), baselineToNow().stream())
                .map(LedgerRow::cells)
                .collect(Collectors.joining(
                        "\n",
                        "change\tsteps\tdifference %\tlow\thigh\tcall\tbefore and after\tcost\tsentence\n",
                        "\n"));
    }
}
