package org.pullproof.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.pullproof.app.AmendChange.Amendment;
import org.pullproof.app.ChangeSetup;
import org.pullproof.app.OpenSession;
import org.pullproof.app.Toolbox;
import org.pullproof.app.TypedLevels;
import org.pullproof.changes.Change;
import org.pullproof.engine.Setup;
import org.pullproof.session.Session;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Brings the engine into another setup, or puts right what is recorded of the change that made one. */
@Command(
        name = "change",
        description = "Brings the engine into another setup, new or known; for the present setup it puts right what is"
                + " recorded of the change that made it.",
        footer = {"", "Example: pullproof change grey-coupe \"jets up\" --what \"main jets 70 to 72\" --cost 18USD"})
final class ChangeCommand implements Callable<Integer> {
    private final Toolbox tools;
    private final Clock clock;

    @Parameters(index = "0", paramLabel = "SESSION", description = "The session's folder.")
    private Path session;

    @Parameters(index = "1", paramLabel = "SETUP", description = "Name of the setup the engine is in afterwards.")
    private String setup;

    @Mixin
    private StepOptions step;

    @Option(
            names = "--level",
            paramLabel = "FACTOR=VALUE[UNIT]",
            description = "A numeric setting of that setup, such as timing=32deg; repeatable.")
    private List<String> levels = List.of();

    @Mixin
    private WhenOption at;

    @Mixin
    private Output output;

    @Spec
    private CommandSpec spec;

    ChangeCommand(Toolbox tools, Clock clock) {
        this.tools = tools;
        this.clock = clock;
    }

    @Override
    public Integer call() throws Exception {
        OpenSession open = tools.desk().open(session);
        Optional<Setup> known = ChangeSetup.find(open.session(), setup);
        Amendment amendment = step.amendment();
        OpenSession next = tools.changeSetup().to(open, wanted(amendment));
        if (known.isPresent() && !amendment.isEmpty()) {
            next = tools.amendChange().madeInto(next, known.get().id(), amendment);
        }
        print(next.session());
        return Output.DONE;
    }

    private ChangeSetup.Wanted wanted(Amendment amendment) {
        return new ChangeSetup.Wanted(
                setup,
                amendment.what().orElse(""),
                typedLevels(),
                amendment.cost().flatMap(cost -> cost),
                at.by(clock),
                amendment.rotating().orElse(Set.of()));
    }

    private Map<String, Quantity> typedLevels() {
        try {
            return TypedLevels.read(levels);
        } catch (IllegalArgumentException wrong) {
            throw new ParameterException(spec.commandLine(), String.valueOf(wrong.getMessage()));
        }
    }

    private void print(Session now) {
        if (output.json()) {
            output.print(new Json()
                    .put("presentSetup", now.present().name())
                    .put(
                            "changes",
                            now.changes().stream()
                                    .map(change -> json(now, change))
                                    .toList()));
        } else {
            output.print("The engine is in " + now.present().name() + " now.");
            now.changes().stream()
                    .filter(change -> change.to().equals(now.presentSetup()))
                    .findFirst()
                    .ifPresent(change -> output.print(words(now, change)));
        }
    }

    private static String words(Session now, Change change) {
        String cost =
                change.cost().map(Figures::money).map(money -> ", " + money).orElse("");
        String parts = change.rotating().isEmpty() ? "" : ", touched " + change.rotating();
        return "Made from " + name(now, change.from()) + ": " + change.what() + cost + parts + ".";
    }

    private static Json json(Session now, Change change) {
        return new Json()
                .put("from", name(now, change.from()))
                .put("to", name(now, change.to()))
                .put("what", change.what())
                .put("time", change.time().toString())
                .put("cost", change.cost())
                .put(
                        "touches",
                        change.rotating().stream().map(part -> part.key()).toList());
    }

    private static String name(Session session, String id) {
        return session.setup(id).map(Setup::name).orElse(id);
    }
}
