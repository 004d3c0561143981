package org.pullproof.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.pullproof.report.Block;
import org.pullproof.report.Cell;
import org.pullproof.report.ReportModel;
import org.pullproof.report.ReportModel.Item;
import org.pullproof.report.ReportModel.Section;

/** The report's model as JSON: figures unrounded under keys that name their unit, everything else in words. */
final class ReportJson {
    private ReportJson() {}

    static Json of(ReportModel report) {
        Json json = new Json()
                .put("title", report.title())
                .put("car", report.carName())
                .put("engine", report.engine());
        report.head().forEach(item -> json.put(item.key(), item.words()));
        json.put("answers", report.answers().stream().map(ReportJson::answer).toList());
        json.put("sections", report.sections().stream().map(ReportJson::section).toList());
        return json.put("foot", report.foot());
    }

    private static Json answer(ReportModel.Answer answer) {
        return new Json()
                .put("key", answer.key())
                .put("question", answer.question())
                .put("answer", answer.answer().plain());
    }

    private static Json section(Section section) {
        Json json = new Json().put("key", section.key()).put("title", section.title());
        if (!section.caption().isEmpty()) {
            json.put("caption", section.caption());
        }
        section.blocks().forEach(block -> put(json, block));
        rows(section).forEach(json::put);
        return json;
    }

    /** Tables of one key, such as the pulls of each day, make one list. */
    private static Map<String, List<Json>> rows(Section section) {
        Map<String, List<Json>> rows = new LinkedHashMap<>();
        for (Block block : section.blocks()) {
            if (block instanceof Block.Table table) {
                rows.computeIfAbsent(table.key(), key -> new ArrayList<>())
                        .addAll(table.rows().stream()
                                .map(row -> row(table, row))
                                .toList());
            }
        }
        return rows;
    }

    private static void put(Json json, Block block) {
        if (block instanceof Block.Paragraph paragraph) {
            json.put("sentence", paragraph.sentence().plain());
        } else if (block instanceof Block.Points points) {
            json.put(points.key(), points.points());
        } else if (block instanceof Block.Photos photos) {
            json.put(
                    photos.key(),
                    photos.photos().stream().map(Block.Photo::words).toList());
        } else if (block instanceof Block.Items items) {
            items.items().forEach(item -> put(json, item));
        }
    }

    private static void put(Json json, Item item) {
        json.put(item.key(), item.words());
    }

    private static Json row(Block.Table table, List<Cell> row) {
        Json json = new Json();
        for (int i = 0; i < row.size(); i++) {
            put(json, table.columns().get(i).key(), row.get(i));
        }
        return json;
    }

    private static void put(Json json, String key, Cell cell) {
        if (cell.value().isPresent()) {
            json.put(key, cell.value());
        } else if (cell.recorded()) {
            json.put(key, cell.words());
        }
    }
}
