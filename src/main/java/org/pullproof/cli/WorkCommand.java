package org.pullproof.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.pullproof.app.OpenSession;
import org.pullproof.app.Toolbox;
import org.pullproof.tuneup.Afterwards;
import org.pullproof.tuneup.BreakIn;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Work done on the engine, what beds in since, and what was looked at again. */
@Command(
        name = "work",
        description = "Keeps work done on cylinders, so that only later readings are weighed, and what has to bed in.",
        footer = {"", "Example: pullproof work grey-coupe --done lash-set=6 --new cam"})
final class WorkCommand implements Callable<Integer> {
    private final Toolbox tools;
    private final Clock clock;

    @Parameters(paramLabel = "SESSION", description = "The session's folder.")
    private Path session;

    @Option(
            names = "--done",
            paramLabel = "WORK=CYLINDERS",
            description =
                    "lash-set, plug, coil, wire, injector, head, rings, ignition-parts or other, on cylinders 3,6 or on all."
                            + " Repeatable.")
    private Map<String, String> done = Map.of();

    @Option(
            names = "--new",
            paramLabel = "rings|cam|bearings",
            description = "This is new and has to bed in; repeatable.")
    private List<String> fresh = List.of();

    @Option(
            names = "--bedded",
            paramLabel = "WHAT=REASON",
            description = "It counts as bedded in, and why; repeatable.")
    private Map<String, String> bedded = Map.of();

    @Option(
            names = "--looked-at",
            paramLabel = "TEXT",
            description = "This was looked at again after the tune-up, in the words of the list; repeatable.")
    private List<String> again = List.of();

    @Mixin
    private WhenOption at;

    @Mixin
    private Output output;

    WorkCommand(Toolbox tools, Clock clock) {
        this.tools = tools;
        this.clock = clock;
    }

    @Override
    public Integer call() throws Exception {
        OpenSession open = told(tools.desk().open(session));
        Afterwards after =
                tools.appraise().of(open, output.figures(tools)).tuneUp().afterwards();
        if (output.json()) {
            output.print(new Json()
                    .put(
                            "afterwards",
                            after.again().stream().map(StepsPrinter::json).toList())
                    .put("breakIn", after.breakIn())
                    .put("fullLoadLock", after.fullLoadLock()));
        } else {
            print(after);
        }
        return Output.DONE;
    }

    private void print(Afterwards after) {
        if (after.again().isEmpty() && after.fullLoadLock().isEmpty()) {
            output.print("Nothing is due after the tune-up.");
        }
        after.again().forEach(due -> output.print((due.done() ? "[x] " : "[ ] ") + due.what() + ": " + due.when()));
        after.breakIn().forEach(output::print);
        after.fullLoadLock().ifPresent(lock -> output.print("! " + lock));
    }

    private OpenSession told(OpenSession before) throws Exception {
        LocalDateTime when = at.by(clock);
        OpenSession open = before;
        for (Map.Entry<String, String> work : done.entrySet()) {
            open = tools.recordWork().record(open, work.getKey(), CylinderList.parse(work.getValue()), when);
        }
        for (String what : fresh) {
            open = tools.recordWork().breakIn(open, what(what), when.toLocalDate());
        }
        for (Map.Entry<String, String> what : bedded.entrySet()) {
            open = tools.recordWork().bedded(open, what(what.getKey()), what.getValue());
        }
        for (String what : again) {
            open = tools.recordWork().rechecked(open, what, true);
        }
        return open;
    }

    private static BreakIn.What what(String key) {
        return Arrays.stream(BreakIn.What.values())
                .filter(what -> what.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("\"" + key + "\" is nothing that beds in; write "
                        + Arrays.stream(BreakIn.What.values())
                                .map(BreakIn.What::key)
                                .collect(Collectors.joining(", ")) + "."));
    }
}
