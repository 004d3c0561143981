package org.pullproof.report;

import static org.pullproof.report.Block.Column.drawn;
import static org.pullproof.report.Block.Column.figures;
import static org.pullproof.report.Block.Column.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.pullproof.advice.Appraisal;
import org.pullproof.changes.Call;
import org.pullproof.changes.Change;
import org.pullproof.changes.ChangeLedger;
import org.pullproof.changes.JudgedChange;
import org.pullproof.changes.Unjudged;
import org.pullproof.drawing.CallMark;
import org.pullproof.drawing.IntervalStrip;
import org.pullproof.drawing.ResidualChart;
import org.pullproof.drawing.SweepChart;
import org.pullproof.dyno.PullFindings;
import org.pullproof.engine.Setup;
import org.pullproof.report.ReportModel.Section;
import org.pullproof.units.Figures;
import org.pullproof.units.Sentence;
import org.pullproof.units.Shown;

/** Every change with its interval and call, and the fit behind them. */
record ChangesSections(Appraisal appraisal, Wording wording) {
    private static final double STRIP_WIDTH = 196;
    private static final double STRIP_HEIGHT = 40;
    private static final double RESIDUALS_HEIGHT = 170;
    private static final double SWEEP_HEIGHT = 230;
    private static final double AXIS_HEIGHT = 16;

    /** The ledger; nothing before a change is judged. */
    Optional<Section> inShort() {
        ChangeLedger ledger = appraisal.changes();
        if (ledger.changes().isEmpty() && ledger.unjudged().isEmpty()) {
            return Optional.empty();
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(changes(ledger));
        ledger.sweeps().forEach(sweep -> {
            blocks.add(new Block.Paragraph(new Sentence(sweep.sentence())));
            blocks.add(new Block.Picture(SweepChart.of(sweep, Paper.CONTENT_WIDTH, SWEEP_HEIGHT)));
        });
        ledger.baselineToNow()
                .ifPresent(whole -> blocks.add(new Block.Paragraph(new Sentence(
                        "**From the first setup to the present one,** measured directly: " + whole.sentence()))));
        return Optional.of(new Section("changes", "Changes", howJudged(ledger), blocks));
    }

    /** What the setups do not explain, pull by pull. */
    Optional<Section> inFull() {
        ChangeLedger ledger = appraisal.changes();
        if (ledger.residuals().isEmpty()) {
            return Optional.empty();
        }
        Block picture = new Block.Picture(
                ResidualChart.of(ledger, appraisal.session().setups(), Paper.CONTENT_WIDTH, RESIDUALS_HEIGHT));
        return Optional.of(new Section(
                "fit",
                "The fit behind the changes",
                "what setups and drift leave over, pull by pull",
                List.of(picture)));
    }

    private String howJudged(ChangeLedger ledger) {
        List<String> words = new ArrayList<>();
        words.add(
                ledger.onMeasured()
                        ? "band power as measured, because a pull has no air"
                        : "band power at the wheels, "
                                + appraisal.session().standard().words());
        ledger.repeatabilityPercent()
                .ifPresent(scatter -> words.add("scatter " + Figures.percent(scatter, 2) + " a pull"));
        ledger.driftPercentPerPull()
                .ifPresent(drift -> words.add("drift " + Figures.signedPercent(drift, 2) + " a pull"));
        words.add("intervals 90" + Figures.NO_BREAK_SPACE + "%");
        words.add(
                "before and after are means of the pulls, the difference also takes out drift and the level of each day");
        return String.join("; ", words);
    }

    private Block changes(ChangeLedger ledger) {
        String power = wording.unit(Shown.POWER);
        IntervalStrip strips =
                new IntervalStrip(ledger.changes(), appraisal.session().car().smallestDifferencePercent(), STRIP_WIDTH);
        return new Block.Table(
                "changes",
                "",
                List.of(
                        words("name", "Change"),
                        figures("beforeKw", "Before, " + power),
                        figures("afterKw", "After, " + power),
                        drawn(
                                "differencePercent",
                                "Difference, 90" + Figures.NO_BREAK_SPACE + "% interval",
                                strips.axis(AXIS_HEIGHT)),
                        Block.Column.sentences("call", "Call"),
                        words("cost", "Cost")),
                Stream.concat(
                                ledger.changes().stream().map(change -> row(change, strips)),
                                ledger.unjudged().stream().map(ChangesSections::row))
                        .toList());
    }

    private static List<Cell> row(Unjudged pair) {
        return List.of(
                Cell.words(named(pair.change(), pair.name())),
                Cell.notRecorded(),
                Cell.notRecorded(),
                Cell.notRecorded(),
                call(pair.call(), pair.sentence()),
                Cell.words(pair.change().flatMap(Change::cost).map(Figures::money)));
    }

    private static Cell call(Call call, String sentence) {
        return Cell.words(capital(call.words()) + ". " + sentence).marked(CallMark.of(call));
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private List<Cell> row(JudgedChange change, IntervalStrip strips) {
        return List.of(
                Cell.words(named(change.change(), change.name())),
                wording.power(OptionalDouble.of(change.beforeKw())),
                wording.power(OptionalDouble.of(change.afterKw())),
                Cell.figure(
                                Wording.interval(change.differencePercent(), change.low(), change.high()),
                                change.differencePercent())
                        .drawn(strips.strip(change, STRIP_HEIGHT)),
                call(change.call(), change.sentence()),
                Cell.words(change.change().flatMap(Change::cost).map(Figures::money)));
    }

    /** What was done, then from which setup to which. */
    private static String named(Optional<Change> change, String setups) {
        return change.map(Change::what)
                .filter(what -> !what.isBlank() && !setups.contains(what))
                .map(what -> what + ": " + setups)
                .orElse(setups);
    }

    /** The same pull by pull; nothing before a change is judged. */
    Optional<Block> residuals() {
        return Optional.of(appraisal.changes())
                .filter(ledger -> !ledger.residuals().isEmpty())
                .map(this::residuals);
    }

    private Block residuals(ChangeLedger ledger) {
        return new Block.Table(
                "residuals",
                "Each pull over what its setup alone explains, and the drift at its place",
                List.of(
                        words("pull", "Pull"),
                        words("setup", "Setup"),
                        figures("percent", "Over its setup, %"),
                        figures("driftPercent", "Drift, %")),
                ledger.residuals().stream().map(this::row).toList());
    }

    private String pullName(String id) {
        return appraisal.dyno().pulls().stream()
                .filter(found -> found.pull().id().equals(id))
                .map(PullFindings::name)
                .findFirst()
                .orElse(id);
    }

    private List<Cell> row(ChangeLedger.Residual residual) {
        return List.of(
                Cell.words(pullName(residual.pull())),
                Cell.words(appraisal.session().setup(residual.setup()).map(Setup::name)),
                Cell.figure(Figures.signed(residual.percent(), 2), residual.percent()),
                Cell.figure(Figures.signed(residual.driftPercent(), 2), residual.driftPercent()));
    }
}
