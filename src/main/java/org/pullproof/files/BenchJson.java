package org.pullproof.files;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.pullproof.tuneup.AddedPart;
import org.pullproof.tuneup.BaseSettings;
import org.pullproof.tuneup.Bench;
import org.pullproof.tuneup.BreakIn;
import org.pullproof.tuneup.CurvePoint;
import org.pullproof.tuneup.PartRecord;
import org.pullproof.tuneup.Setting;
import org.pullproof.tuneup.ShelfNote;
import org.pullproof.tuneup.VacuumSource;
import org.pullproof.units.Dimension;
import org.pullproof.units.Money;
import org.pullproof.units.Quantity;

/** What the owner told beside the ticks of the tune-up; its keys stand among those of the tune-up. */
final class BenchJson {
    private BenchJson() {}

    static Bench read(JsonPlace place) throws BadFileException {
        List<ShelfNote> shelf = place.each("shelf", BenchJson::note);
        List<AddedPart> added = place.each("added", BenchJson::added);
        List<PartRecord> parts = place.each("parts", BenchJson::part);
        BaseSettings settings = place.maybe("settings", BenchJson::settings).orElse(BaseSettings.NONE);
        List<BreakIn> breakIns = place.each("breakIns", BenchJson::breakIn);
        Set<String> rechecked = new LinkedHashSet<>(place.each("rechecked", JsonPlace::text));
        Optional<Quantity> odometer = place.maybe("odometer", at -> at.quantity(Dimension.LENGTH));
        return place.checked(() -> new Bench(shelf, added, parts, settings, breakIns, rechecked, odometer));
    }

    private static ShelfNote note(JsonPlace place) throws BadFileException {
        place.onlyKeys("part", "note", "fitted");
        String part = place.at("part").text();
        String words = place.maybe("note", JsonPlace::text).orElse("");
        Set<Integer> fitted = new HashSet<>(place.each("fitted", JsonPlace::whole));
        return place.checked(() -> new ShelfNote(part, words, fitted));
    }

    private static AddedPart added(JsonPlace place) throws BadFileException {
        place.onlyKeys("name", "since");
        String name = place.at("name").text();
        LocalDateTime since = place.at("since").time();
        return place.checked(() -> new AddedPart(name, since));
    }

    private static PartRecord part(JsonPlace place) throws BadFileException {
        place.onlyKeys("part", "fate", "price", "note", "told", "fitted", "fittedAt");
        String part = place.at("part").text();
        PartRecord.Fate fate = place.at("fate").oneOf(PartRecord.Fate.class);
        Optional<Money> price = place.maybe("price", JsonPlace::money);
        String note = place.maybe("note", JsonPlace::text).orElse("");
        LocalDate told = place.at("told").date();
        Optional<LocalDate> fitted = place.maybe("fitted", JsonPlace::date);
        Optional<Quantity> fittedAt = place.maybe("fittedAt", at -> at.quantity(Dimension.LENGTH));
        return place.checked(() -> new PartRecord(part, fate, price, note, told, fitted, fittedAt));
    }

    private static BaseSettings settings(JsonPlace place) throws BadFileException {
        place.onlyKeys("values", "source", "curve");
        Map<Setting, Quantity> values = new EnumMap<>(Setting.class);
        for (Map.Entry<String, JsonPlace> told :
                place.entries("values", at -> at).entrySet()) {
            JsonPlace at = told.getValue();
            Setting setting = Setting.named(told.getKey())
                    .orElseThrow(() -> at.problem("this is no setting known here; known are " + Setting.keys() + "."));
            values.put(setting, at.quantity(setting.dimension()));
        }
        Optional<VacuumSource> source = place.maybe("source", at -> at.oneOf(VacuumSource.class));
        List<CurvePoint> curve = place.each("curve", BenchJson::point);
        return place.checked(() -> new BaseSettings(values, source, curve));
    }

    private static CurvePoint point(JsonPlace place) throws BadFileException {
        place.onlyKeys("speed", "advance");
        Quantity speed = place.at("speed").quantity(Dimension.ROTATION);
        Quantity advance = place.at("advance").quantity(Dimension.ANGLE);
        return place.checked(() -> new CurvePoint(speed, advance));
    }

    private static BreakIn breakIn(JsonPlace place) throws BadFileException {
        place.onlyKeys("what", "since", "odometer", "bedded");
        BreakIn.What what = place.at("what").oneOf(BreakIn.What.class);
        LocalDate since = place.at("since").date();
        Optional<Quantity> odometer = place.maybe("odometer", at -> at.quantity(Dimension.LENGTH));
        Optional<String> bedded = place.maybe("bedded", JsonPlace::text);
        return place.checked(() -> new BreakIn(what, since, odometer, bedded));
    }

    /** Adds the keys of the bench; what says nothing leaves no key. */
    static JsonObject write(JsonObject json, Bench bench) {
        json.unlessEmpty("shelf", bench.shelf().stream().map(BenchJson::write).toList())
                .unlessEmpty(
                        "added", bench.added().stream().map(BenchJson::write).toList())
                .unlessEmpty(
                        "parts", bench.parts().stream().map(BenchJson::write).toList())
                .unlessEmpty(
                        "breakIns",
                        bench.breakIns().stream().map(BenchJson::write).toList())
                .unlessEmpty("rechecked", List.copyOf(bench.rechecked()))
                .text("odometer", bench.odometer());
        return bench.settings().isEmpty() ? json : json.put("settings", write(bench.settings()));
    }

    private static Map<String, Object> write(ShelfNote note) {
        return new JsonObject()
                .put("part", note.part())
                .unlessEmpty("note", note.note())
                .unlessEmpty("fitted", List.copyOf(note.fitted()))
                .entries();
    }

    private static Map<String, Object> write(AddedPart part) {
        return new JsonObject()
                .put("name", part.name())
                .text("since", part.since())
                .entries();
    }

    private static Map<String, Object> write(PartRecord part) {
        return new JsonObject()
                .put("part", part.part())
                .key("fate", part.fate())
                .text("price", part.price())
                .unlessEmpty("note", part.note())
                .text("told", part.told())
                .text("fitted", part.fitted())
                .text("fittedAt", part.fittedAt())
                .entries();
    }

    private static Map<String, Object> write(BaseSettings settings) {
        JsonObject values = new JsonObject();
        settings.values().forEach((setting, value) -> values.text(setting.key(), value));
        return new JsonObject()
                .put("values", values.entries())
                .key("source", settings.source())
                .unlessEmpty(
                        "curve", settings.curve().stream().map(BenchJson::write).toList())
                .entries();
    }

    private static Map<String, Object> write(CurvePoint point) {
        return new JsonObject()
                .text("speed", point.speed())
                .text("advance", point.advance())
                .entries();
    }

    private static Map<String, Object> write(BreakIn breakIn) {
        return new JsonObject()
                .key("what", breakIn.what())
                .text("since", breakIn.since())
                .text("odometer", breakIn.odometer())
                .text("bedded", breakIn.bedded())
                .entries();
    }
}
