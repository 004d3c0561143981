package org.pullproof.files;

import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pullproof.tuneup.PlugRecord;
import org.pullproof.tuneup.TuneUp;
import org.pullproof.units.Dimension;
import org.pullproof.units.Quantity;

/** Steps ticked, parts put back, plugs. */
final class TuneUpJson {
    private record Tick(String step, LocalDateTime time) {}

    private TuneUpJson() {}

    static TuneUp read(JsonPlace place) throws BadFileException {
        place.onlyKeys("done", "back", "plugs");
        Map<String, LocalDateTime> done = new LinkedHashMap<>();
        for (Tick tick : place.each("done", TuneUpJson::tick)) {
            done.put(tick.step(), tick.time());
        }
        List<String> back = place.each("back", JsonPlace::text);
        List<PlugRecord> plugs = place.each("plugs", TuneUpJson::plug);
        return place.checked(() -> new TuneUp(done, new LinkedHashSet<>(back), plugs));
    }

    private static Tick tick(JsonPlace place) throws BadFileException {
        place.onlyKeys("step", "time");
        return new Tick(place.at("step").text(), place.at("time").time());
    }

    private static PlugRecord plug(JsonPlace place) throws BadFileException {
        place.onlyKeys("cylinder", "oldGap", "newGap", "torque");
        int cylinder = place.at("cylinder").whole();
        Optional<Quantity> oldGap = place.maybe("oldGap", at -> at.quantity(Dimension.LENGTH));
        Optional<Quantity> newGap = place.maybe("newGap", at -> at.quantity(Dimension.LENGTH));
        Optional<Quantity> torque = place.maybe("torque", at -> at.quantity(Dimension.TORQUE));
        return place.checked(() -> new PlugRecord(cylinder, oldGap, newGap, torque));
    }

    static Map<String, Object> write(TuneUp tuneUp) {
        return new JsonObject()
                .put(
                        "done",
                        tuneUp.done().entrySet().stream().map(TuneUpJson::write).toList())
                .put("back", List.copyOf(tuneUp.back()))
                .put("plugs", tuneUp.plugs().stream().map(TuneUpJson::write).toList())
                .entries();
    }

    private static Map<String, Object> write(Map.Entry<String, LocalDateTime> tick) {
        return new JsonObject()
                .put("step", tick.getKey())
                .text("time", tick.getValue())
                .entries();
    }

    private static Map<String, Object> write(PlugRecord plug) {
        return new JsonObject()
                .put("cylinder", plug.cylinder())
                .text("oldGap", plug.oldGap())
                .text("newGap", plug.newGap())
                .text("torque", plug.torque())
                .entries();
    }
}
