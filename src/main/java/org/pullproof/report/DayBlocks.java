package org.pullproof.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.pullproof.advice.Appraisal;
import org.pullproof.advice.GatePoint;
import org.pullproof.dyno.DayFact;
import org.pullproof.dyno.DynoDay;
import org.pullproof.report.ReportModel.Item;

/** What a dyno day tells besides air and pulls: the gate before the first pull with its reasons, aborts, how the car stood. */
record DayBlocks(Appraisal appraisal) {
    List<Block> blocks() {
        if (appraisal.session().days().isEmpty()) {
            return List.of();
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(appraisal.gate().answer()));
        points(blocks, "gateInTheWay", "Not passed at the gate", sentences());
        points(blocks, "gateReasons", "Passed at the gate with a reason", reasons());
        points(blocks, "aborts", "Pulls broken off", aborts());
        appraisal.session().days().stream()
                .filter(day -> !day.facts().isEmpty())
                .forEach(day -> blocks.add(new Block.Items(facts(day))));
        return blocks;
    }

    private static void points(List<Block> blocks, String key, String head, List<String> sentences) {
        if (!sentences.isEmpty()) {
            blocks.add(new Block.Points(key, head, sentences, false));
        }
    }

    private List<String> sentences() {
        Map<String, List<GatePoint>> alike = appraisal.gate().inTheWay().stream()
                .collect(Collectors.groupingBy(DayBlocks::stands, LinkedHashMap::new, Collectors.toList()));
        return alike.entrySet().stream()
                .map(points -> sentence(points.getKey(), points.getValue()))
                .toList();
    }

    private static String stands(GatePoint point) {
        return point.state().words() + (point.why().isEmpty() ? "" : ", " + point.why());
    }

    /** What stands the same way, most often "not ticked", is told in one sentence. */
    private static String sentence(String stands, List<GatePoint> points) {
        return points.size() == 1
                ? points.get(0).sentence()
                : stands + ": " + points.stream().map(GatePoint::name).collect(Collectors.joining("; ")) + ".";
    }

    /** Those of the last day in full; those of earlier days as they were typed. */
    private List<String> reasons() {
        List<DynoDay> days = appraisal.session().days();
        Stream<String> earlier = days.subList(0, days.size() - 1).stream()
                .flatMap(day -> day.gate().passed().entrySet().stream().map(passed -> dated(day, passed)));
        return Stream.concat(earlier, appraisal.gate().reasons().stream()).toList();
    }

    private static String dated(DynoDay day, Map.Entry<String, String> passed) {
        return Wording.day(day.date()) + ", " + passed.getKey() + ": " + passed.getValue();
    }

    private List<String> aborts() {
        return appraisal.session().days().stream()
                .flatMap(day -> day.gate().aborts().stream())
                .map(abort -> Wording.minute(abort.time()) + ": " + abort.cause())
                .toList();
    }

    private static List<Item> facts(DynoDay day) {
        List<Item> items = new ArrayList<>();
        items.add(new Item("day", "Car on the dyno", Wording.day(day.date())));
        for (Map.Entry<DayFact, String> fact : day.facts().entrySet()) {
            items.add(new Item(fact.getKey().key(), fact.getKey().words(), fact.getValue()));
        }
        return items;
    }
}
