package org.pullproof.simulation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.pullproof.app.ChangeSetup;
import org.pullproof.app.OpenSession;
import org.pullproof.app.Toolbox;
import org.pullproof.cli.CommandHarness;
import org.pullproof.cli.CommandHarness.Outcome;
import org.pullproof.engine.EngineProfile;
import org.pullproof.testing.Tools;
import org.pullproof.tuneup.PlugRecord;
import org.pullproof.tuneup.Step;
import org.pullproof.units.Money;

/** Fills one session the way its owner would: by commands, and by the acts of the window where no command exists. */
final class DemoSession {
    private final Path folder;
    private final Path scratch;
    private final Toolbox tools = Tools.ofTheProgram();
    private final CommandHarness commands = new CommandHarness(tools);

    /**
     * @param folder where the session is made
     * @param scratch where files lie before they are taken in
     */
    DemoSession(Path folder, Path scratch) {
        this.folder = folder;
        this.scratch = scratch;
    }

    Path folder() {
        return folder;
    }

    void begin(String profile, String name, String... facts) {
        run("new", folder, "--profile", profile, "--name", name);
        List<Object> arguments = new ArrayList<>(List.of("set", folder));
        arguments.addAll(Arrays.asList(facts));
        run(arguments.toArray());
    }

    void readings(String name, Object table) {
        run("add-readings", folder, file(name, table.toString()));
    }

    Path file(String name, String text) {
        try {
            return Files.writeString(scratch.resolve(name), text);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /**
     * @throws IllegalStateException with what the command said, if it failed
     */
    void run(Object... arguments) {
        Outcome outcome = commands.run(arguments);
        if (outcome.status() != 0) {
            throw new IllegalStateException(Arrays.toString(arguments) + ": " + outcome.err());
        }
    }

    void change(ChangeSetup.Wanted wanted) {
        act(open -> tools.changeSetup().to(open, wanted));
    }

    void plug(PlugRecord plug) {
        act(open -> tools.recordPlug().record(open, plug));
    }

    /** Ticks every step in order; what a step took off goes back on before the start gate. */
    void tuneUp(LocalDateTime from) {
        LocalDateTime time = from;
        List<Step> steps = steps();
        for (Step step : steps) {
            if (step.kind() == Step.Kind.START_GATE) {
                steps.stream().filter(done -> done.kind() == Step.Kind.WORK).forEach(this::putBack);
            }
            String id = step.id();
            LocalDateTime when = time;
            act(open -> tools.tickStep().tick(open, id, when));
            if (step.kind() != Step.Kind.WORK) {
                putBack(step);
            }
            time = time.plusMinutes(step.minutes());
        }
    }

    private List<Step> steps() {
        EngineProfile profile = open().session().profile();
        return new org.pullproof.files.TradeFiles().stepGraphs().of(profile).steps();
    }

    private void putBack(Step step) {
        for (String part : step.takesOff()) {
            act(open -> tools.tickStep().putBack(open, part));
        }
        for (String part : step.backBeforeStart()) {
            act(open -> tools.tickStep().putBack(open, part));
        }
    }

    void spend(String what, Money money) {
        run("worth", folder, "--spend", what + "=" + money.toString().replace(" ", ""));
    }

    private interface DiskAct {
        OpenSession on(OpenSession open) throws IOException;
    }

    private void act(DiskAct act) {
        try {
            act.on(open());
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private OpenSession open() {
        try {
            return tools.desk().open(folder);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
