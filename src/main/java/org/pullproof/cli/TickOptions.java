package org.pullproof.cli;

import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import org.pullproof.app.OpenSession;
import org.pullproof.app.Toolbox;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What is told of the steps and of the off-car shelf on one command line, done in one order. */
final class TickOptions {
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

    @Mixin
    private WhenOption at;

    @Option(names = "--off", paramLabel = "NAME", description = "Something came off that no step names; repeatable.")
    private List<String> off = List.of();

    @Option(
            names = "--fit",
            paramLabel = "PART=CYLINDERS",
            description = "This part is back on these cylinders: plugs=1,3. Repeatable.")
    private Map<String, String> fit = Map.of();

    @Option(
            names = "--note",
            paramLabel = "PART=TEXT",
            description = "Where this part lies, what belongs to it; repeatable.")
    private Map<String, String> notes = Map.of();

    /** The session with all of it done. */
    OpenSession applied(Toolbox tools, Clock clock, OpenSession before) throws Exception {
        LocalDateTime when = at.by(clock);
        return shelved(tools, ticked(tools, before, when), when);
    }

    private OpenSession ticked(Toolbox tools, OpenSession before, LocalDateTime when) throws Exception {
        OpenSession open = want.isEmpty() ? before : tools.tickStep().want(before, want);
        for (String step : undo) {
            open = tools.tickStep().untick(open, step);
        }
        for (String step : done) {
            open = tools.tickStep().tick(open, step, when);
        }
        return cap.isEmpty() ? open : tools.recordWires().cap(open, cap);
    }

    private OpenSession shelved(Toolbox tools, OpenSession before, LocalDateTime when) throws Exception {
        OpenSession open = before;
        for (String part : off) {
            open = tools.shelveParts().add(open, part, when);
        }
        for (Map.Entry<String, String> part : fit.entrySet()) {
            open = fitted(tools, open, part.getKey(), CylinderList.parse(part.getValue()));
        }
        for (String part : back) {
            open = tools.tickStep().putBack(open, part);
        }
        for (Map.Entry<String, String> left : leaveOff.entrySet()) {
            open = tools.tickStep().leaveOff(open, left.getKey(), left.getValue());
        }
        for (Map.Entry<String, String> note : notes.entrySet()) {
            open = tools.shelveParts().note(open, note.getKey(), note.getValue());
        }
        return open;
    }

    private static OpenSession fitted(Toolbox tools, OpenSession before, String part, List<Integer> cylinders)
            throws Exception {
        OpenSession open = cylinders.isEmpty() ? tools.tickStep().putBack(before, part) : before;
        for (int cylinder : cylinders) {
            open = tools.shelveParts().fit(open, part, cylinder);
        }
        return open;
    }
}
