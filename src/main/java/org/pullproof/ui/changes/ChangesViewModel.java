package org.pullproof.ui.changes;

import java.time.Clock;
import java.time.LocalDateTime;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.pullproof.app.AmendChange;
import org.pullproof.app.ChangeSetup;
import org.pullproof.app.PlanPulls;
import org.pullproof.changes.Change;
import org.pullproof.changes.ChangeLedger;
import org.pullproof.changes.CurveBand;
import org.pullproof.changes.JudgedChange;
import org.pullproof.changes.RotatingPart;
import org.pullproof.drawing.IntervalStrip;
import org.pullproof.engine.Setup;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.units.Figures;
import org.pullproof.units.Money;
import org.pullproof.units.Quantity;

/** State and decisions of the sheet Changes: the ledger, and the step to another setup. */
public final class ChangesViewModel {
    private final SessionViewModel model;
    private final ChangeActs acts;
    private final Clock clock;
    private final PlanPulls planPulls = new PlanPulls();
    private int chosen;

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
     * @param levels numeric settings of the setup
     * @param cost what it cost, if typed
     * @throws IllegalArgumentException if no setup is named or it is the present one
     */
    public void change(String setup, String what, Map<String, Quantity> levels, Optional<Money> cost) {
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
        model.act(acts.change(new ChangeSetup.Wanted(name, what.strip(), levels, cost, now, Set.of())));
    }

    /** Chooses a line of the ledger. */
    public void choose(int row) {
        chosen = row;
    }

    /** The chosen comparison; empty where nothing is compared yet. */
    private Optional<LedgerRow> chosenRow() {
        List<LedgerRow> all =
                Stream.concat(rows().stream(), baselineToNow().stream()).toList();
        return chosen >= 0 && chosen < all.size() ? Optional.of(all.get(chosen)) : Optional.empty();
    }

    /** "base → timing 32°"; empty where nothing is chosen. */
    public String chosenName() {
        return chosenRow().map(LedgerRow::steps).orElse("");
    }

    /** The recorded change of the chosen line, if it is one. */
    public Optional<Change> chosenChange() {
        return chosenRow().flatMap(LedgerRow::change);
    }

    /** Name of the setup whose pictures are shown: the one the chosen change led to, else the present one. */
    String pictured() {
        return chosenChange()
                .flatMap(change -> model.session().setup(change.to()))
                .orElseGet(() -> model.session().present())
                .name();
    }

    /** The chosen difference over engine speed. */
    public Optional<CurveBand> chosenBand() {
        return chosenRow().flatMap(LedgerRow::judged).flatMap(JudgedChange::curve);
    }

    /** The pulls of both sides of the chosen line, in order of time. */
    public List<PullLine> chosenPulls() {
        List<String> sides = chosenRow().map(LedgerRow::sides).orElse(List.of());
        return model.appraisal().dyno().pulls().stream()
                .filter(pull -> sides.contains(pull.pull().setup()))
                .map(pull -> PullLine.of(pull, figures()))
                .toList();
    }

    /** Puts right what is recorded of the chosen change. */
    public void amendChosen(AmendChange.Amendment amendment) {
        chosenChange().ifPresent(change -> model.act(acts.amend(change.to(), amendment)));
    }

    /**
     * Reads "flywheel, gear".
     *
     * @throws IllegalArgumentException with a sentence if one is no rotating part
     */
    static Set<RotatingPart> rotatingParts(String typed) {
        Set<RotatingPart> parts = new LinkedHashSet<>();
        for (String word : typed.split("[,;]", -1)) {
            parts.add(RotatingPart.named(word)
                    .orElseThrow(() -> new IllegalArgumentException("\"" + word.strip()
                            + "\" is no rotating part: write " + String.join(", ", RotatingPart.keys()) + ".")));
        }
        return parts;
    }

    /** A plan for a gain in words, with the scatter of this session; or why there is none. */
    public String plan(Optional<Quantity> gain, Optional<Integer> settings, Optional<Integer> minutes) {
        try {
            PlanPulls.Wanted wanted = new PlanPulls.Wanted(
                    gain.map(of -> of.si() * 100).orElse(0.0),
                    settings.orElse(2),
                    minutes.map(OptionalInt::of).orElse(OptionalInt.empty()));
            return planPulls
                    .forGain(wanted, PlanPulls.scatterOf(Optional.of(ledger())))
                    .sentence()
                    .plain();
        } catch (IllegalArgumentException refused) {
            return String.valueOf(refused.getMessage());
        }
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
