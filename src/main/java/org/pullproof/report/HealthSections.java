package org.pullproof.report;

import static org.pullproof.report.Block.Column.figures;
import static org.pullproof.report.Block.Column.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.pullproof.advice.Appraisal;
import org.pullproof.drawing.Drawing;
import org.pullproof.drawing.TilePlan;
import org.pullproof.health.AirPlace;
import org.pullproof.health.HealthFindings;
import org.pullproof.health.HealthFindings.CylinderFindings;
import org.pullproof.health.HealthFindings.Rule;
import org.pullproof.health.HealthFindings.State;
import org.pullproof.health.LoadPoint;
import org.pullproof.health.Reading;
import org.pullproof.health.TestKind;
import org.pullproof.report.ReportModel.Section;
import org.pullproof.units.Figures;
import org.pullproof.units.Shown;
import org.pullproof.units.Unit;

/** Is the engine sound: the cylinders in short, then side by side with the rules. */
record HealthSections(Appraisal appraisal, Wording wording) {
    /** The plan, and why. */
    Section inShort() {
        HealthFindings health = appraisal.health();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Picture(tiles()));
        points("reasons", "Why", health.reasons()).ifPresent(blocks::add);
        new FaultBlocks(health.faults()).candidates().ifPresent(blocks::add);
        points("remarks", "Also to be said", health.remarks()).ifPresent(blocks::add);
        points(
                        "missing",
                        "Not yet read",
                        health.missing().stream().map(TestKind::words).toList())
                .ifPresent(blocks::add);
        points(
                        "loadPoints",
                        "Before it is loaded (judgement)",
                        LoadPoint.of(health).stream().map(LoadPoint::sentence).toList())
                .ifPresent(blocks::add);
        return new Section("health", "Health", howMade(), blocks);
    }

    private static Optional<Block> points(String key, String title, List<String> points) {
        return points.isEmpty() ? Optional.empty() : Optional.of(new Block.Points(key, title, points, false));
    }

    /** The cylinders side by side and the rules; nothing if nothing was read. */
    Optional<Section> inFull() {
        List<Block> blocks = new ArrayList<>();
        if (appraisal.health().cylinders().stream().anyMatch(one -> one.state() != State.NOT_MEASURED)) {
            blocks.add(cylinders());
        }
        points("before", "Read before work was done, no longer weighed", before())
                .ifPresent(blocks::add);
        if (!appraisal.health().rules().isEmpty()) {
            blocks.add(rules());
        }
        return blocks.isEmpty()
                ? Optional.empty()
                : Optional.of(new Section("readings", "Readings of its health", spread(), blocks));
    }

    private Drawing tiles() {
        return TilePlan.of(
                appraisal.session().profile(), appraisal.health().cylinders(), wording.figures(), Paper.CONTENT_WIDTH);
    }

    private String howMade() {
        List<String> ways = appraisal.session().readings().stream()
                .filter(Reading.Compression.class::isInstance)
                .map(reading -> Wording.conditions(reading.conditions()))
                .distinct()
                .toList();
        return switch (ways.size()) {
            case 0 -> "";
            case 1 ->
                ways.get(0).isEmpty() ? "compression: how it was made is not recorded" : "compression: " + ways.get(0);
            default -> "compression was read in " + ways.size() + " ways, see the readings";
        };
    }

    private String spread() {
        OptionalDouble spread = appraisal.health().spreadPercent();
        return spread.isPresent()
                ? "spread of dry compression " + Figures.percent(spread.getAsDouble(), 1) + " of the highest"
                : "";
    }

    private Block cylinders() {
        String pressure = wording.unit(Shown.COMPRESSION);
        return new Block.Table(
                "cylinders",
                "By cylinder",
                List.of(
                        figures("number", "Cylinder"),
                        words("words", "Stands"),
                        figures("dropRpm", "Drop, rpm"),
                        figures("firstKpa", "First, " + pressure),
                        figures("dryKpa", "Dry, " + pressure),
                        figures("drySeaLevelKpa", "Dry at sea level, " + pressure),
                        figures("wetKpa", "Wet, " + pressure),
                        figures("leakPercent", "Leak"),
                        figures("referenceLeakPercent", "Leak, ref. tester, %"),
                        figures("leakAreaMm2", "Leak area, mm²"),
                        words("air", "Air heard"),
                        words("plug", "Plug")),
                appraisal.health().cylinders().stream().map(this::row).toList());
    }

    private List<Cell> row(CylinderFindings cylinder) {
        return List.of(
                Cell.figure(String.valueOf(cylinder.number()), cylinder.number()),
                Cell.words(cylinder.words()),
                Wording.number(cylinder.dropRpm(), 0),
                wording.bare(cylinder.first(), Shown.COMPRESSION, Unit.KPA),
                wording.bare(cylinder.dry(), Shown.COMPRESSION, Unit.KPA),
                wording.figure(cylinder.drySeaLevel(), Shown.COMPRESSION, Unit.KPA),
                wording.bare(cylinder.wet(), Shown.COMPRESSION, Unit.KPA),
                leak(cylinder),
                Wording.number(cylinder.referenceLeakPercent(), 0),
                Wording.number(cylinder.leakAreaMm2(), 2),
                Cell.words(places(cylinder)),
                Cell.words(cylinder.plugLook()));
    }

    private List<String> before() {
        return appraisal.health().cylinders().stream()
                .filter(cylinder -> !cylinder.before().isEmpty())
                .map(cylinder -> "Cylinder " + cylinder.number() + ": " + String.join(" ", cylinder.before()))
                .toList();
    }

    private static Cell leak(CylinderFindings cylinder) {
        return Cell.of(cylinder.leakWords().orElse(""), cylinder.leakPercent());
    }

    private static String places(CylinderFindings cylinder) {
        return cylinder.air().stream().sorted().map(AirPlace::key).collect(Collectors.joining(", "));
    }

    private Block rules() {
        return new Block.Table(
                "rules",
                "Rules of the trade for compression",
                List.of(
                        words("name", "Rule"),
                        words("met", "Met"),
                        words("found", "Found"),
                        Block.Column.sentences("source", "Source")),
                appraisal.health().rules().stream().map(HealthSections::row).toList());
    }

    private static List<Cell> row(Rule rule) {
        return List.of(
                Cell.words(rule.name()),
                Cell.words(rule.met() ? "met" : "not met"),
                Cell.words(rule.found()),
                Cell.words(rule.source()));
    }
}
