package org.pullproof.files;

import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.pullproof.tuneup.Bench;
import org.pullproof.tuneup.PlugRecord;
import org.pullproof.tuneup.StepGraph;
import org.pullproof.tuneup.TuneUp;
import org.pullproof.tuneup.WireRecord;
import org.pullproof.units.Dimension;
import org.pullproof.units.Quantity;

/** Steps ticked, parts put back, plugs. */
final class TuneUpJson {
    private record Tick(String step, LocalDateTime time) {}

    private record LeftOff(String part, String reason) {}

    private TuneUpJson() {}

    static TuneUp read(JsonPlace place) throws BadFileException {
        place.onlyKeys(
                "wanted",
                "done",
                "back",
                "leftOff",
                "plugs",
                "wires",
                "capOrder",
                "shelf",
                "added",
                "parts",
                "settings",
                "breakIns",
                "rechecked",
                "odometer",
                "steps");
        Map<String, LocalDateTime> done = new LinkedHashMap<>();
        for (Tick tick : place.each("done", TuneUpJson::tick)) {
            done.put(tick.step(), tick.time());
        }
        List<String> back = place.each("back", JsonPlace::text);
        List<String> wanted = place.each("wanted", JsonPlace::text);
        Map<String, String> leftOff = new LinkedHashMap<>();
        for (LeftOff left : place.each("leftOff", TuneUpJson::leftOff)) {
            leftOff.put(left.part(), left.reason());
        }
        List<PlugRecord> plugs = place.each("plugs", TuneUpJson::plug);
        List<WireRecord> wires = place.each("wires", TuneUpJson::wire);
        List<Integer> capOrder = place.each("capOrder", JsonPlace::whole);
        Bench bench = BenchJson.read(place);
        Optional<StepGraph> own = place.maybe("steps", new StepGraphJson(UnaryOperator.identity())::read);
        return place.checked(() -> new TuneUp(
                new LinkedHashSet<>(wanted),
                done,
                new LinkedHashSet<>(back),
                leftOff,
                plugs,
                wires,
                capOrder,
                bench,
                own));
    }

    private static Tick tick(JsonPlace place) throws BadFileException {
        place.onlyKeys("step", "time");
        return new Tick(place.at("step").text(), place.at("time").time());
    }

    private static LeftOff leftOff(JsonPlace place) throws BadFileException {
        place.onlyKeys("part", "reason");
        return new LeftOff(place.at("part").text(), place.at("reason").text());
    }

    private static WireRecord wire(JsonPlace place) throws BadFileException {
        place.onlyKeys("cylinder", "resistance", "length", "route");
        int cylinder = place.at("cylinder").whole();
        Optional<Quantity> resistance = place.maybe("resistance", at -> at.quantity(Dimension.RESISTANCE));
        Optional<Quantity> length = place.maybe("length", at -> at.quantity(Dimension.LENGTH));
        String route = place.maybe("route", JsonPlace::text).orElse("");
        return place.checked(() -> new WireRecord(cylinder, resistance, length, route));
    }

    private static PlugRecord plug(JsonPlace place) throws BadFileException {
        place.onlyKeys("cylinder", "oldGap", "newGap", "torque", "heatRange");
        int cylinder = place.at("cylinder").whole();
        Optional<Quantity> oldGap = place.maybe("oldGap", at -> at.quantity(Dimension.LENGTH));
        Optional<Quantity> newGap = place.maybe("newGap", at -> at.quantity(Dimension.LENGTH));
        Optional<Quantity> torque = place.maybe("torque", at -> at.quantity(Dimension.TORQUE));
        String heatRange = place.maybe("heatRange", JsonPlace::text).orElse("");
        return place.checked(() -> new PlugRecord(cylinder, oldGap, newGap, torque, heatRange));
    }

    static Map<String, Object> write(TuneUp tuneUp) {
        JsonObject json = new JsonObject()
                .put("wanted", List.copyOf(tuneUp.wanted()))
                .put(
                        "done",
                        tuneUp.done().entrySet().stream().map(TuneUpJson::write).toList())
                .put("back", List.copyOf(tuneUp.back()))
                .put(
                        "leftOff",
                        tuneUp.leftOff().entrySet().stream()
                                .map(TuneUpJson::writeLeftOff)
                                .toList())
                .put("plugs", tuneUp.plugs().stream().map(TuneUpJson::write).toList())
                .put("wires", tuneUp.wires().stream().map(TuneUpJson::write).toList())
                .put("capOrder", tuneUp.capOrder());
        tuneUp.own().map(StepGraphJson::write).ifPresent(steps -> json.put("steps", steps));
        return BenchJson.write(json, tuneUp.bench()).entries();
    }

    private static Map<String, Object> write(Map.Entry<String, LocalDateTime> tick) {
        return new JsonObject()
                .put("step", tick.getKey())
                .text("time", tick.getValue())
                .entries();
    }

    private static Map<String, Object> writeLeftOff(Map.Entry<String, String> left) {
        return new JsonObject()
                .put("part", left.getKey())
                .put("reason", left.getValue())
                .entries();
    }

    private static Map<String, Object> write(WireRecord wire) {
        return new JsonObject()
                .put("cylinder", wire.cylinder())
                .text("resistance", wire.resistance())
                .text("length", wire.length())
                .put("route", wire.route())
                .entries();
    }

    private static Map<String, Object> write(PlugRecord plug) {
        return new JsonObject()
                .put("cylinder", plug.cylinder())
                .text("oldGap", plug.oldGap())
                .text("newGap", plug.newGap())
                .text("torque", plug.torque())
                .unlessEmpty("heatRange", plug.heatRange())
                .entries();
    }
}
