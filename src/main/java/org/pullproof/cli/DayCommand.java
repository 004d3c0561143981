package org.pullproof.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.pullproof.advice.Appraisal;
import org.pullproof.advice.LoadGate;
import org.pullproof.app.OpenSession;
import org.pullproof.app.Toolbox;
import org.pullproof.dyno.DayFact;
import org.pullproof.dyno.DayPlan;
import org.pullproof.files.BadFileException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows a dyno day, and goes through the gate before its first pull. */
@Command(
        name = "day",
        description =
                "Shows the last dyno day: the gate before the first pull and how the car stands; passes the gate.",
        footer = {
            "",
            "A tick, a reason, an abort or a fact counts for the day of --at, else for today.",
            "",
            "Example: pullproof day grey-coupe --tick brakes --pass \"codes=no computer\""
        })
final class DayCommand implements Callable<Integer> {
    private final Toolbox tools;
    private final Clock clock;

    @Parameters(paramLabel = "SESSION", description = "The session's folder.")
    private Path session;

    @Option(names = "--tick", paramLabel = "POINT", description = "Looked at and right; repeatable.")
    private List<String> ticks = List.of();

    @Option(
            names = "--pass",
            paramLabel = "POINT=REASON",
            description = "Pass a point that is not right or not known; the reason stands in the report. Repeatable.")
    private Map<String, String> reasons = Map.of();

    @Option(names = "--undo", paramLabel = "POINT", description = "Take a tick or a reason back; repeatable.")
    private List<String> undone = List.of();

    @Option(
            names = "--abort",
            paramLabel = "CAUSE",
            description = "Note a pull broken off; every point of the gate is then looked at again.")
    private Optional<String> abort = Optional.empty();

    @Option(
            names = "--tell",
            paramLabel = "FACT=WORDS",
            description =
                    "How the car stands: calibration, straps, gear, lock-up, tyres, fuel, fan, logging. Repeatable.")
    private Map<String, String> told = Map.of();

    @Option(
            names = "--plan",
            paramLabel = "SETUP",
            split = ",",
            description = "The order in which setups are to be pulled: base,timing 32,base.")
    private List<String> visits = List.of();

    @Option(
            names = "--pulls",
            paramLabel = "N",
            defaultValue = "3",
            description = "Pulls at each visit; without it, 3.")
    private int pulls;

    @Mixin
    private WhenOption at;

    @Mixin
    private Output output;

    @Spec
    private CommandSpec spec;

    DayCommand(Toolbox tools, Clock clock) {
        this.tools = tools;
        this.clock = clock;
    }

    @Override
    public Integer call() throws Exception {
        OpenSession open = tools.desk().open(session);
        Appraisal appraisal = appraised(edited(open, appraised(open)));
        if (output.json()) {
            output.print(new DayPrinter(appraisal).json());
        } else {
            new DayPrinter(appraisal).lines().forEach(output::print);
        }
        return Output.DONE;
    }

    private Appraisal appraised(OpenSession open) {
        return tools.appraise().of(open, output.figures(tools));
    }

    private OpenSession edited(OpenSession before, Appraisal now) throws BadFileException {
        LocalDateTime when = at.by(clock);
        LoadGate gate = now.gate();
        OpenSession open = before;
        if (abort.isPresent()) {
            open = tools.prepareDay().abort(open, abort.get(), when);
        }
        for (String point : undone) {
            open = tools.prepareDay().undo(open, gate, point, when.toLocalDate());
        }
        for (String point : ticks) {
            open = tools.prepareDay().tick(open, gate, point, when);
        }
        for (Map.Entry<String, String> passed : reasons.entrySet()) {
            open = tools.prepareDay().pass(open, gate, passed.getKey(), passed.getValue(), when.toLocalDate());
        }
        for (Map.Entry<String, String> fact : told.entrySet()) {
            open = tools.prepareDay().tell(open, fact(fact.getKey()), fact.getValue(), when.toLocalDate());
        }
        return visits.isEmpty()
                ? open
                : tools.prepareDay().plan(open, Optional.of(new DayPlan(visits, pulls)), when.toLocalDate());
    }

    private DayFact fact(String key) {
        String known = Arrays.stream(DayFact.values()).map(DayFact::key).collect(Collectors.joining(", "));
        return DayFact.named(key)
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(), "\"" + key + "\" is no fact of a day; they are " + known + "."));
    }
}
