package org.pullproof.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pullproof.advice.Appraisal;
import org.pullproof.advice.GatePoint;
import org.pullproof.advice.LoadGate;
import org.pullproof.dyno.DynoDay;

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
                .put("abortRules", gate.rules().abort());
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(gate.day().map(day -> "Dyno day " + day + ". ").orElse("No dyno day yet. ")
                + gate.answer().plain());
        lines.add("");
        lines.addAll(points().lines());
        day().filter(day -> !day.facts().isEmpty()).ifPresent(day -> addFacts(lines, day));
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

    private static void addFacts(List<String> lines, DynoDay day) {
        lines.add("");
        day.facts().forEach((fact, words) -> lines.add(fact.words() + ": " + words));
    }
}
