package org.pullproof.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pullproof.advice.Appraisal;
import org.pullproof.advice.GatePoint;
import org.pullproof.advice.LoadGate;
import org.pullproof.dyno.DynoDay;
import org.pullproof.dyno.RunList.Run;

/** Writes what a dyno day is, in lines for people and as JSON. */
final class DayPrinter {
    private final Appraisal appraisal;
    private final LoadGate gate;

    DayPrinter(Appraisal appraisal) {
        this.appraisal = appraisal;
        this.gate = appraisal.gate();
    }

    private Optional<DynoDay> day() {
        return appraisal.session().days().stream().reduce((earlier, later) -> later);
    }

    Json json() {
        Json facts = new Json();
        day().ifPresent(day -> day.facts().forEach((fact, words) -> facts.put(fact.key(), words)));
        return new Json()
                .put("day", gate.day().map(String::valueOf))
                .put("gate", GateJson.of(gate))
                .put("facts", facts)
                .put("beforeThePull", appraisal.day().start().due(appraisal.figures()))
                .put("runs", runs().stream().map(DayPrinter::json).toList())
                .put("next", appraisal.day().runs().next().map(Run::name))
                .put("abortRules", gate.rules().abort());
    }

    private List<Run> runs() {
        return appraisal.day().runs().runs();
    }

    private static Json json(Run run) {
        return new Json()
                .put("name", run.name())
                .put("setup", run.setup())
                .put("made", run.made().map(String::valueOf))
                .put("excluded", run.excluded());
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(gate.day().map(day -> "Dyno day " + day + ". ").orElse("No dyno day yet. ")
                + gate.answer().plain());
        lines.add("");
        lines.addAll(points().lines());
        day().filter(day -> !day.facts().isEmpty()).ifPresent(day -> addFacts(lines, day));
        lines.add("");
        lines.add("Before the next pull:");
        appraisal.day().start().due(appraisal.figures()).forEach(due -> lines.add("- " + due));
        addRuns(lines);
        lines.add("");
        lines.add("Break the pull off at:");
        gate.rules().abort().forEach(sign -> lines.add("- " + sign));
        lines.add(gate.rules().abortAct());
        return lines;
    }

    private Table points() {
        Table table = new Table().words("stands").words("point").words("must be right");
        gate.points().forEach(point -> table.row(point.state().words(), point.key(), words(point)));
        return table;
    }

    private static String words(GatePoint point) {
        return point.name() + (point.why().isEmpty() ? "" : " (" + point.why() + ")");
    }

    private void addRuns(List<String> lines) {
        if (runs().isEmpty()) {
            return;
        }
        Table table = new Table().words("pull").words("made").words("");
        runs().forEach(run -> table.row(
                run.name(),
                run.made().map(made -> made.toLocalTime().toString()).orElse("to come"),
                run.excluded().map(reason -> "does not count: " + reason).orElse("")));
        lines.add("");
        lines.addAll(table.lines());
    }

    private static void addFacts(List<String> lines, DynoDay day) {
        lines.add("");
        day.facts().forEach((fact, words) -> lines.add(fact.words() + ": " + words));
    }
}
