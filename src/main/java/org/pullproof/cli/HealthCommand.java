package org.pullproof.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.pullproof.app.Toolbox;
import org.pullproof.health.AirPlace;
import org.pullproof.health.HealthFindings;
import org.pullproof.health.HealthFindings.CylinderFindings;
import org.pullproof.health.HealthFindings.Rule;
import org.pullproof.health.LoadPoint;
import org.pullproof.health.ReadingWords;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.Shown;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Tells whether the engine is sound. */
@Command(
        name = "health",
        description = "Tells whether the engine is sound, why, and how each cylinder stands.",
        footer = {"", "Example: pullproof health grey-coupe"})
final class HealthCommand implements Callable<Integer> {
    private static final String NOT_RECORDED = "–";

    private final Toolbox tools;

    @Parameters(paramLabel = "SESSION", description = "The session's folder.")
    private Path session;

    @Mixin
    private Output output;

    HealthCommand(Toolbox tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() throws Exception {
        Figures figures = output.figures(tools);
        HealthFindings findings =
                tools.appraise().of(tools.desk().open(session), figures).health();
        if (output.json()) {
            output.print(json(findings));
        } else {
            print(findings, figures);
        }
        return Output.DONE;
    }

    private static Json json(HealthFindings findings) {
        Json json = new Json()
                .put("sound", findings.verdict().key())
                .put("answer", findings.answer().plain())
                .put("reasons", findings.reasons())
                .put("remarks", findings.remarks())
                .put(
                        "missing",
                        findings.missing().stream().map(test -> test.key()).toList())
                .put("spreadPercent", findings.spreadPercent())
                .put(
                        "loadPoints",
                        LoadPoint.of(findings).stream().map(HealthCommand::json).toList())
                .put("rules", findings.rules().stream().map(HealthCommand::json).toList())
                .put(
                        "cylinders",
                        findings.cylinders().stream()
                                .map(cylinder -> json(cylinder)
                                        .put("candidates", FaultsJson.candidates(findings.faults(), cylinder.number())))
                                .toList());
        return FaultsJson.put(json, findings.faults());
    }

    private static Json json(LoadPoint point) {
        return new Json()
                .put("name", point.name())
                .put("standing", point.standing().words())
                .put("why", point.why());
    }

    private static Json json(Rule rule) {
        return new Json()
                .put("name", rule.name())
                .put("met", rule.met())
                .put("source", rule.source())
                .put("found", rule.found());
    }

    private static Json json(CylinderFindings cylinder) {
        Json json = new Json().put("number", cylinder.number()).put("words", cylinder.words());
        if (cylinder.dry().isPresent() || cylinder.wet().isPresent()) {
            json.put("compression", compression(cylinder));
        }
        if (cylinder.leakWords().isPresent()) {
            json.put("leakdown", leakdown(cylinder));
        }
        if (cylinder.dropRpm().isPresent()) {
            json.put(
                    "balance",
                    new Json().put("dropRpm", cylinder.dropRpm()).put("sharePercent", cylinder.sharePercent()));
        }
        return json.put("plug", cylinder.plugLook()).put("before", cylinder.before());
    }

    private static Json compression(CylinderFindings cylinder) {
        Json json = new Json();
        kilopascal(json, "dryKpa", cylinder.dry());
        kilopascal(json, "firstKpa", cylinder.first());
        kilopascal(json, "wetKpa", cylinder.wet());
        json.put("strokes", cylinder.strokes());
        cylinder.drySeaLevel().ifPresent(pascal -> json.put("drySeaLevelKpa", pascal / 1e3));
        return json;
    }

    private static void kilopascal(Json json, String key, Optional<Quantity> pressure) {
        pressure.ifPresent(there -> json.put(key, there.pressure().kilopascal()));
    }

    private static Json leakdown(CylinderFindings cylinder) {
        return new Json()
                .put("leakPercent", cylinder.leakPercent())
                .put("words", cylinder.leakWords())
                .put("leakAreaMm2", cylinder.leakAreaMm2())
                .put("referenceLeakPercent", cylinder.referenceLeakPercent())
                .put("air", cylinder.air().stream().sorted().map(AirPlace::key).toList());
    }

    private void print(HealthFindings findings, Figures figures) {
        output.print(findings.answer().plain());
        findings.reasons().forEach(reason -> output.print("- " + reason));
        output.print("");
        output.print(cylinders(findings.cylinders(), figures));
        if (!findings.rules().isEmpty()) {
            output.print("");
            output.print(rules(findings.rules()));
        }
        printList("What it may be (chances are judgement)", FaultLines.candidates(findings.faults()));
        printList("Of the whole engine", FaultLines.engineWide(findings.faults()));
        printList("Next test", FaultLines.nextTests(findings.faults()));
        printList(
                "Whole engine",
                findings.engineSigns().stream()
                        .map(sign -> ReadingWords.of(sign, figures))
                        .toList());
        printList("To be said", findings.remarks());
        printList(
                "Before it is loaded",
                LoadPoint.of(findings).stream().map(LoadPoint::sentence).toList());
        printList(
                "Before work done",
                findings.cylinders().stream()
                        .flatMap(cylinder -> cylinder.before().stream()
                                .map(before -> "cylinder " + cylinder.number() + ": " + before))
                        .toList());
    }

    private void printList(String head, List<String> lines) {
        if (!lines.isEmpty()) {
            output.print("");
            output.print(head + ":");
            lines.forEach(line -> output.print("- " + line));
        }
    }

    private static Table cylinders(List<CylinderFindings> cylinders, Figures figures) {
        String unit = ", " + figures.unit(Shown.COMPRESSION).symbol();
        Table table = new Table()
                .figures("cylinder")
                .figures("drop, rpm")
                .figures("first" + unit)
                .figures("dry" + unit)
                .figures("wet" + unit)
                .figures("leak")
                .words("stands");
        cylinders.forEach(cylinder -> table.row(
                String.valueOf(cylinder.number()),
                cylinder.dropRpm().stream()
                        .mapToObj(drop -> Figures.number(drop, 0))
                        .findFirst()
                        .orElse(NOT_RECORDED),
                pressure(cylinder.first(), figures),
                pressure(cylinder.dry(), figures),
                pressure(cylinder.wet(), figures),
                cylinder.leakWords().orElse(NOT_RECORDED),
                cylinder.words()));
        return table;
    }

    private static String pressure(Optional<Quantity> pressure, Figures figures) {
        return pressure.map(there -> figures.bare(there.si(), Shown.COMPRESSION))
                .orElse(NOT_RECORDED);
    }

    private static Table rules(List<Rule> rules) {
        Table table = new Table()
                .words("rule, strictest first")
                .words("")
                .words("found")
                .words("source");
        rules.forEach(rule -> table.row(rule.name(), rule.met() ? "met" : "not met", rule.found(), rule.source()));
        return table;
    }
}
