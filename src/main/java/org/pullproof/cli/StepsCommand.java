package org.pullproof.cli;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.pullproof.app.OpenSession;
import org.pullproof.app.Toolbox;
import org.pullproof.tuneup.TuneUpFindings;
import org.pullproof.tuneup.TuneUpFindings.Block;
import org.pullproof.tuneup.TuneUpFindings.OffCar;
import org.pullproof.tuneup.TuneUpFindings.StepState;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists the steps of the tune-up, and ticks them. */
@Command(
        name = "steps",
        description = "Lists the tune-up's steps in order, what is off the car, and what still blocks the start.",
        footer = {"", "Example: pullproof steps grey-coupe --done a --done b --back \"battery lead\""})
final class StepsCommand implements Callable<Integer> {
    private final Toolbox tools;

    @Parameters(paramLabel = "SESSION", description = "The session's folder.")
    private Path session;

    @Option(names = "--done", paramLabel = "ID", description = "Tick this step first; repeatable.")
    private List<String> done = List.of();

    @Option(names = "--undo", paramLabel = "ID", description = "Take the tick of this step away; repeatable.")
    private List<String> undo = List.of();

    @Option(names = "--back", paramLabel = "PART", description = "Note that this part is back on the car; repeatable.")
    private List<String> back = List.of();

    @Option(
            names = "--want",
            paramLabel = "PLAN|ID",
            description = "Plan these steps and what they need: a plan's name, a step, or all; repeatable.")
    private List<String> want = List.of();

    @Option(
            names = "--leave-off",
            paramLabel = "PART=REASON",
            description = "Leave this part off on purpose; the reason stands in the report. Repeatable.")
    private Map<String, String> leaveOff = Map.of();

    @Option(
            names = "--cap",
            paramLabel = "CYLINDER",
            split = ",",
            description = "Cylinders as their wires stand around the cap, in the direction the rotor turns: 1,3,4,2.")
    private List<Integer> cap = List.of();

    @Option(
            names = "--at",
            paramLabel = "TIME",
            converter = Arguments.TimeArgument.class,
            description = "When the steps were done: 2026-06-14T13:40; without it, now.")
    private Optional<LocalDateTime> at = Optional.empty();

    @Mixin
    private Output output;

    StepsCommand(Toolbox tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() throws Exception {
        TuneUpFindings findings =
                tools.appraise().of(edited(), output.figures(tools)).tuneUp();
        if (output.json()) {
            output.print(json(findings));
        } else {
            print(findings);
        }
        return Output.DONE;
    }

    private OpenSession edited() throws Exception {
        OpenSession open = tools.desk().open(session);
        LocalDateTime when = at.orElseGet(() -> LocalDateTime.now(ZoneId.systemDefault()));
        if (!want.isEmpty()) {
            open = tools.tickStep().want(open, want);
        }
        for (String step : undo) {
            open = tools.tickStep().untick(open, step);
        }
        for (String step : done) {
            open = tools.tickStep().tick(open, step, when);
        }
        for (String part : back) {
            open = tools.tickStep().putBack(open, part);
        }
        for (Map.Entry<String, String> left : leaveOff.entrySet()) {
            open = tools.tickStep().leaveOff(open, left.getKey(), left.getValue());
        }
        return cap.isEmpty() ? open : tools.recordWires().cap(open, cap);
    }

    private static Json json(TuneUpFindings findings) {
        return new Json()
                .put("answer", findings.answer().plain())
                .put("steps", findings.steps().stream().map(StepsCommand::json).toList())
                .put(
                        "offCar",
                        findings.offCar().stream()
                                .map(off -> new Json()
                                        .put("part", off.part())
                                        .put("step", off.step())
                                        .put("since", off.since().toString()))
                                .toList())
                .put(
                        "startBlockedBy",
                        findings.startBlockedBy().stream()
                                .map(block ->
                                        new Json().put("what", block.what()).put("step", block.step()))
                                .toList())
                .put("leftOff", findings.leftOff())
                .put("wires", findings.wireRemarks())
                .put("plans", List.copyOf(findings.plan().choices().keySet()))
                .put("because", findings.plan().because())
                .put("minutesLeft", findings.plan().minutesLeft())
                .put("minutesAtMost", findings.plan().minutesAtMost());
    }

    private static Json json(StepState step) {
        return new Json()
                .put("id", step.step().id())
                .put("title", step.step().title())
                .put("state", step.state().key())
                .put("needs", step.step().needs())
                .put("minutes", step.step().minutes())
                .put("cautions", step.step().cautions());
    }

    private void print(TuneUpFindings findings) {
        output.print(findings.answer().plain());
        output.print("");
        output.print(table(findings.steps()));
        output.print("Left to do: typically " + findings.plan().minutesLeft() + " min, nine of ten below "
                + findings.plan().minutesAtMost() + " min (judgement).");
        list("Order:", findings.plan().because());
        list("Off the car:", findings.offCar().stream().map(OffCar::part).toList());
        list(
                "In the way of the start:",
                findings.startBlockedBy().stream().map(Block::what).toList());
        list("Left off on purpose:", findings.leftOff());
        list("Wires:", findings.wireRemarks());
    }

    private static Table table(List<StepState> steps) {
        Table table = new Table().words("id").words("step").words("state").figures("min");
        steps.forEach(step -> table.row(
                step.step().id(),
                step.step().title(),
                step.waitsFor().isEmpty() ? step.state().key() : "waits for " + String.join(", ", step.waitsFor()),
                String.valueOf(step.step().minutes())));
        return table;
    }

    private void list(String head, List<String> lines) {
        if (!lines.isEmpty()) {
            output.print("");
            output.print(head);
            lines.forEach(line -> output.print("- " + line));
        }
    }
}
