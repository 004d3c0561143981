package org.pullproof.cli;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import org.pullproof.app.PlanPulls;
import org.pullproof.app.PlanPulls.Planned;
import org.pullproof.app.Toolbox;
import org.pullproof.changes.ChangeLedger;
import org.pullproof.changes.Plan;
import org.pullproof.units.Quantity;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plans the pulls of a day. */
@Command(
        name = "plan",
        description =
                "Plans the pulls of a day for a gain that is to be seen, or tells what an order of pulls can see.",
        footer = {
            "",
            "The order names each visit of a setup once; A is the base. The gain seen is",
            "seen four times in five. A pull takes about 5 minutes with its share of changes.",
            "",
            "Examples: pullproof plan grey-coupe --gain 1.5%% --minutes 60",
            "          pullproof plan --order A,B,A --pulls 2 --scatter 0.5%%"
        })
final class PlanCommand implements Callable<Integer> {
    private final Toolbox tools;
    private final PlanPulls planPulls = new PlanPulls();

    @Parameters(
            arity = "0..1",
            paramLabel = "SESSION",
            description = "The session whose scatter is used; without it 0.6 %%.")
    private Optional<Path> session = Optional.empty();

    @Option(
            names = "--gain",
            paramLabel = "PERCENT",
            converter = Arguments.ShareArgument.class,
            description = "The gain that is to be seen, such as 1.5%%.")
    private Optional<Quantity> gain = Optional.empty();

    @Option(names = "--settings", paramLabel = "N", description = "How many setups, the base counted; 2 unless told.")
    private Optional<Integer> settings = Optional.empty();

    @Option(names = "--minutes", paramLabel = "M", description = "How long there is.")
    private Optional<Integer> minutes = Optional.empty();

    @Option(names = "--order", paramLabel = "A,B,A", description = "Instead of a gain: the visits in order.")
    private Optional<String> order = Optional.empty();

    @Option(names = "--pulls", paramLabel = "N", description = "With an order: pulls at each visit.")
    private Optional<Integer> pulls = Optional.empty();

    @Option(
            names = "--scatter",
            paramLabel = "PERCENT",
            converter = Arguments.ShareArgument.class,
            description = "Scatter from pull to pull, such as 0.5%%; goes before that of the session.")
    private Optional<Quantity> scatter = Optional.empty();

    @Mixin
    private Output output;

    @Spec
    private CommandSpec spec;

    PlanCommand(Toolbox tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() throws Exception {
        requireOneQuestion();
        double percent = scatterPercent();
        Planned planned = order.isPresent()
                ? planPulls.of(visits(), pulls.orElseThrow(), percent)
                : planPulls.forGain(wanted(), percent);
        if (output.json()) {
            output.print(json(planned));
        } else {
            output.print(planned.sentence().plain());
        }
        return Output.DONE;
    }

    private void requireOneQuestion() {
        boolean forGain = gain.isPresent() && order.isEmpty() && pulls.isEmpty();
        boolean ofOrder =
                order.isPresent() && pulls.isPresent() && gain.isEmpty() && settings.isEmpty() && minutes.isEmpty();
        if (!forGain && !ofOrder) {
            throw new ParameterException(
                    spec.commandLine(),
                    "Either --gain 1.5% (with --settings and --minutes if they matter), or --order A,B,A with --pulls 2.");
        }
    }

    private PlanPulls.Wanted wanted() {
        return new PlanPulls.Wanted(
                gain.orElseThrow().si() * 100,
                settings.orElse(2),
                minutes.map(OptionalInt::of).orElse(OptionalInt.empty()));
    }

    private List<String> visits() {
        return Arrays.stream(order.orElseThrow().split(",", -1))
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .toList();
    }

    private double scatterPercent() throws Exception {
        if (scatter.isPresent()) {
            return scatter.get().si() * 100;
        }
        Optional<ChangeLedger> ledger = session.isEmpty()
                ? Optional.empty()
                : Optional.of(tools.appraise()
                        .of(tools.desk().open(session.get()), output.figures(tools))
                        .changes());
        return PlanPulls.scatterOf(ledger);
    }

    private static Json json(Planned planned) {
        Plan plan = planned.plan();
        return new Json()
                .put("pullsPerSetup", plan.pullsPerSetup())
                .put("controlPulls", plan.controlPulls())
                .put("totalPulls", plan.totalPulls())
                .put("detectablePercent", plan.detectablePercent())
                .put("order", plan.order())
                .put("scatterPercent", planned.scatterPercent())
                .put("enough", planned.enough())
                .put("sentence", planned.sentence().plain());
    }
}
