package org.pullproof.cli;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.pullproof.app.OpenSession;
import org.pullproof.app.Toolbox;
import org.pullproof.session.Judgement;
import org.pullproof.session.TradeConstant;
import org.pullproof.units.Figures;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists the values that the program judges by, and puts a session's own in their place. */
@Command(
        name = "judgement",
        description = {
            "Lists every value that the program judges by, with unit, status and words.",
            "NAME=VALUE puts another in its place, for this session only; NAME= goes back.",
            "All of them or, if one is wrong, none."
        },
        footer = {"", "Example: pullproof judgement grey-coupe faults.priors.faultyCylinders=0.3"})
final class JudgementCommand implements Callable<Integer> {
    private final Toolbox tools;

    @Parameters(index = "0", paramLabel = "SESSION", description = "The session's folder.")
    private Path session;

    @Parameters(index = "1..*", arity = "0..*", paramLabel = "NAME=VALUE", description = "What to judge by.")
    private List<String> assignments = List.of();

    @Option(names = "--reset", description = "Go back to the program's own values throughout.")
    private boolean reset;

    @Mixin
    private Output output;

    @Spec
    private CommandSpec spec;

    JudgementCommand(Toolbox tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() throws Exception {
        Judgement judgement = edited().session().judgement();
        List<TradeConstant> constants = tools.editJudgement().constants();
        if (output.json()) {
            output.print(new Json()
                    .put(
                            "judgement",
                            constants.stream()
                                    .flatMap(constant -> numbers(constant, judgement))
                                    .toList()));
        } else {
            output.print(table(constants, judgement));
        }
        return Output.DONE;
    }

    private OpenSession edited() throws Exception {
        OpenSession open = tools.desk().open(session);
        if (reset) {
            open = tools.editJudgement().reset(open);
        }
        return assignments.isEmpty() ? open : tools.editJudgement().edit(open, values());
    }

    private static Stream<Json> numbers(TradeConstant constant, Judgement judgement) {
        return constant.numbers().stream()
                .map(number -> new Json()
                        .put("name", number.name())
                        .put("value", judgement.of(number.name()).orElse(number.own()))
                        .put("own", number.own())
                        .put("unit", constant.unit())
                        .put("status", constant.status())
                        .put("words", constant.words()));
    }

    private static Table table(List<TradeConstant> constants, Judgement judgement) {
        Table table = new Table()
                .words("name")
                .figures("value")
                .figures("own")
                .words("unit")
                .words("status")
                .words("");
        constants.forEach(constant -> constant.numbers()
                .forEach(number -> table.row(
                        number.name(),
                        Figures.plain(judgement.of(number.name()).orElse(number.own())),
                        judgement.of(number.name()).isPresent() ? Figures.plain(number.own()) : "",
                        constant.unit(),
                        constant.status(),
                        constant.words())));
        return table;
    }

    private Map<String, Optional<Double>> values() {
        Map<String, Optional<Double>> values = new LinkedHashMap<>();
        Assignments.of(assignments, spec.commandLine(), "health.weakDrop=12")
                .forEach((name, text) -> values.put(name, value(name, text.strip())));
        return values;
    }

    private Optional<Double> value(String name, String text) {
        try {
            return text.isEmpty() ? Optional.empty() : Optional.of(Double.valueOf(text.replace(',', '.')));
        } catch (NumberFormatException noNumber) {
            throw new ParameterException(
                    spec.commandLine(), "\"" + name + "\" takes a plain number in its own unit, not \"" + text + "\".");
        }
    }
}
