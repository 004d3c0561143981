package org.pullproof.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.pullproof.advice.Appraisal;
import org.pullproof.advice.NextStep;
import org.pullproof.advice.Stage;
import org.pullproof.app.Toolbox;
import org.pullproof.units.Figures;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Tells the one thing to do now. */
@Command(
        name = "next",
        description = "Tells the one thing to do now, why, what it settles, and the cautions for it.",
        footer = {"", "Example: pullproof next grey-coupe"})
final class NextCommand implements Callable<Integer> {
    private final Toolbox tools;

    @Parameters(paramLabel = "SESSION", description = "The session's folder.")
    private Path session;

    @Mixin
    private Output output;

    NextCommand(Toolbox tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() throws Exception {
        Appraisal appraisal = tools.appraise().of(tools.desk().open(session), output.figures(tools));
        NextStep next = appraisal.next();
        if (output.json()) {
            Json told = json(next);
            if (waitsAtGate(appraisal)) {
                told.put("gate", GateJson.of(appraisal.gate()));
            }
            output.print(told);
        } else {
            print(next);
        }
        return Output.DONE;
    }

    private static boolean waitsAtGate(Appraisal appraisal) {
        return appraisal.gate().blocks() && appraisal.next().stage() == Stage.DYNO_DAY;
    }

    private static Json json(NextStep next) {
        return new Json()
                .put("action", next.action())
                .put("why", next.why())
                .put("settles", next.settles())
                .put("minutes", next.minutes())
                .put("cost", next.cost().value())
                .put("currency", next.cost().currency())
                .put("needs", next.needs().key())
                .put("cautions", next.cautions());
    }

    private void print(NextStep next) {
        output.print(next.action());
        output.print("Why: " + next.why());
        output.print("What it settles: " + next.settles());
        output.print("Takes about " + next.minutes() + " min and " + Figures.money(next.cost()) + "; needs: "
                + next.needs().words() + ".");
        output.print("Before you begin:");
        next.cautions().forEach(caution -> output.print("- " + caution));
    }
}
