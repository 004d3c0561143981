package org.pullproof.files;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.Consumer;

/** Brings a session of an older format up to the present one, step by step; the file on disk stays as it is until the next edit. */
final class SessionUpgrade {
    /** Step i turns format i + 1 into format i + 2. What does not look as it should is left for the reader to complain of. */
    private static final List<Consumer<ObjectNode>> STEPS = List.of(SessionUpgrade::airAsItWasRead);

    /** The format written, and the newest that is read. */
    static final int FORMAT = STEPS.size() + 1;

    private SessionUpgrade() {}

    /**
     * @throws BadFileException if the file has no number, or another than this version reads
     */
    static JsonPlace upgraded(JsonPlace place) throws BadFileException {
        DocumentFormat.require(place, FORMAT);
        int format = place.at("format").whole();
        return place.changed(root -> STEPS.subList(format - 1, STEPS.size()).forEach(step -> step.accept(root)));
    }

    /** Format 1 knew one form of the air: station pressure, temperature, relative humidity. */
    private static void airAsItWasRead(ObjectNode root) {
        for (JsonNode day : root.path("days")) {
            for (JsonNode reading : day.path("air")) {
                if (reading instanceof ObjectNode air) {
                    rename(air, "stationPressure", "pressure", "station");
                    rename(air, "temperature", "temperature", "intake");
                    rename(air, "relativeHumidity", "moisture", "relative-humidity");
                }
            }
        }
    }

    private static void rename(ObjectNode air, String old, String now, String form) {
        JsonNode read = air.remove(old);
        if (read != null) {
            air.putObject(now).put("as", form).set("read", read);
        }
    }
}
