package org.pullproof.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.pullproof.advice.Appraisal;
import org.pullproof.app.Toolbox;
import org.pullproof.changes.ChangeLedger;
import org.pullproof.changes.JudgedChange;
import org.pullproof.units.Figures;
import org.pullproof.units.Shown;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Tells of every change whether it made power. */
@Command(
        name = "changes",
        description = "Tells of every change whether it made power: difference, 90 %% interval, call.",
        footer = {"", "Example: pullproof changes grey-coupe --units metric"})
final class ChangesCommand implements Callable<Integer> {
    private final Toolbox tools;

    @Parameters(paramLabel = "SESSION", description = "The session's folder.")
    private Path session;

    @Mixin
    private Output output;

    ChangesCommand(Toolbox tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() throws Exception {
        Figures figures = output.figures(tools);
        Appraisal appraisal = tools.appraise().of(tools.desk().open(session), figures);
        ChangeLedger ledger = appraisal.changes();
        if (output.json()) {
            output.print(new ChangesJson(appraisal.session()).of(ledger));
        } else {
            print(ledger, figures);
        }
        return Output.DONE;
    }

    private void print(ChangeLedger ledger, Figures figures) {
        output.print(ledger.answer().plain());
        Table table = table(ledger, figures);
        if (!table.isEmpty()) {
            output.print("");
            output.print(table);
            output.print("Before and after are means of the pulls; the difference has drift and days taken out.");
        }
        ledger.baselineToNow()
                .ifPresent(whole -> output.print("Base to now, " + whole.name() + ": " + whole.sentence()));
        ledger.sweeps().forEach(sweep -> output.print(sweep.sentence()));
        ledger.repeatabilityPercent()
                .ifPresent(scatter -> output.print("Scatter " + Figures.percent(scatter, 2) + " a pull, drift "
                        + Figures.signedPercent(ledger.driftPercentPerPull().orElse(0), 2)
                        + " a pull; intervals 90 %."));
    }

    private static Table table(ChangeLedger ledger, Figures figures) {
        String unit = ", " + figures.unit(Shown.POWER).symbol();
        Table table = new Table()
                .words("change")
                .figures("before" + unit)
                .figures("after" + unit)
                .figures("difference")
                .words("90 % interval")
                .words("call")
                .words("");
        ledger.changes().forEach(change -> row(table, change, figures));
        ledger.unjudged()
                .forEach(change -> table.row(
                        change.name(), "–", "–", "–", "–", change.call().words(), change.sentence()));
        return table;
    }

    private static void row(Table table, JudgedChange change, Figures figures) {
        table.row(
                change.name(),
                figures.bare(change.beforeKw() * 1e3, Shown.POWER),
                figures.bare(change.afterKw() * 1e3, Shown.POWER),
                Figures.signedPercent(change.differencePercent(), 1),
                Figures.signed(change.low(), 1) + " to " + Figures.signed(change.high(), 1),
                change.call().words(),
                change.sentence());
    }
}
