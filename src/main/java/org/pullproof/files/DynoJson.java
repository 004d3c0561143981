package org.pullproof.files;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pullproof.dyno.ColumnChoice;
import org.pullproof.dyno.DayFact;
import org.pullproof.dyno.DayGate;
import org.pullproof.dyno.DayPlan;
import org.pullproof.dyno.Drum;
import org.pullproof.dyno.DynoDay;
import org.pullproof.dyno.HowRead;
import org.pullproof.dyno.Pull;
import org.pullproof.dyno.PullFile;
import org.pullproof.dyno.Role;
import org.pullproof.dyno.StatedFigure;
import org.pullproof.units.Dimension;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;
import org.pullproof.weather.AirReading;
import org.pullproof.weather.Standard;
import org.pullproof.weather.TypedAir;

/** Dyno days: the air as read and the pulls with their files. */
final class DynoJson {
    private DynoJson() {}

    static DynoDay readDay(JsonPlace place) throws BadFileException {
        place.onlyKeys("date", "air", "pulls", "gate", "facts", "plan");
        LocalDate date = place.at("date").date();
        List<AirReading> air = place.each("air", AirJson::readReading);
        List<Pull> pulls = place.each("pulls", DynoJson::pull);
        DayGate gate = place.maybe("gate", DayJson::gate).orElse(DayGate.untouched());
        Map<DayFact, String> facts = place.maybe("facts", DayJson::facts).orElse(Map.of());
        Optional<DayPlan> plan = place.maybe("plan", DayJson::plan);
        return place.checked(() -> new DynoDay(date, air, pulls, gate, facts, plan));
    }

    static StatedFigure readStated(JsonPlace place) throws BadFileException {
        place.onlyKeys("power", "standard", "at", "air", "note");
        Quantity power = place.at("power").quantity(Dimension.POWER);
        Optional<Standard> standard = place.maybe("standard", at -> at.oneOf(Standard.class));
        StatedFigure.At where = place.at("at").oneOf(StatedFigure.At.class);
        Optional<TypedAir> air = place.maybe("air", AirJson::read);
        String note = place.maybe("note", JsonPlace::text).orElse("");
        return place.checked(() -> new StatedFigure(power, standard, where, air, note));
    }

    private static Pull pull(JsonPlace place) throws BadFileException {
        place.onlyKeys(
                "setup",
                "number",
                "file",
                "time",
                "takenIn",
                "columns",
                "part",
                "drum",
                "asMeasured",
                "correctedAlready",
                "excluded");
        String setup = place.at("setup").text();
        int number = place.at("number").whole();
        PullFile file = place.need("file", DynoJson::file);
        LocalDateTime time = place.at("time").time();
        Optional<LocalDateTime> takenIn = place.maybe("takenIn", JsonPlace::time);
        HowRead how = how(place);
        Optional<Standard> corrected = place.maybe("correctedAlready", at -> at.oneOf(Standard.class));
        Optional<String> excluded = place.maybe("excluded", JsonPlace::text);
        return place.checked(() -> new Pull(setup, number, file, time, takenIn, how, corrected, excluded));
    }

    private static HowRead how(JsonPlace place) throws BadFileException {
        List<ColumnChoice> columns = place.each("columns", DynoJson::column);
        int part = place.maybe("part", JsonPlace::whole).orElse(1);
        Optional<Drum> drum = place.maybe("drum", DynoJson::drum);
        boolean asMeasured = place.maybe("asMeasured", JsonPlace::flag).orElse(false);
        return place.checked(() -> new HowRead(columns, part, drum, asMeasured));
    }

    private static Drum drum(JsonPlace place) throws BadFileException {
        place.onlyKeys("inertia", "within", "radius");
        Quantity inertia = place.at("inertia").quantity(Dimension.INERTIA);
        Optional<Quantity> within = place.maybe("within", at -> at.quantity(Dimension.SHARE));
        Optional<Quantity> radius = place.maybe("radius", at -> at.quantity(Dimension.LENGTH));
        return place.checked(() -> new Drum(inertia, within, radius));
    }

    private static PullFile file(JsonPlace place) throws BadFileException {
        place.onlyKeys("original", "kept", "sha256");
        String original = place.at("original").text();
        JsonPlace kept = place.at("kept");
        String name = kept.text();
        if (!SafeName.isSafe(name)) {
            throw kept.problem("\"" + name + "\" is no plain file name; a kept file lies in the folder pulls/ itself.");
        }
        String sha256 = place.at("sha256").text();
        return place.checked(() -> new PullFile(original, name, sha256));
    }

    static ColumnChoice column(JsonPlace place) throws BadFileException {
        place.onlyKeys("role", "header", "unit");
        Role role = place.at("role").oneOf(Role.class);
        String header = place.at("header").text();
        Optional<Unit> unit = place.maybe("unit", DynoJson::unit);
        return place.checked(() -> new ColumnChoice(role, header, unit));
    }

    private static Unit unit(JsonPlace place) throws BadFileException {
        String symbol = place.text();
        return Unit.named(symbol)
                .orElseThrow(() -> place.problem("\"" + symbol + "\" is no unit known here, such as rpm or kW."));
    }

    static Map<String, Object> write(DynoDay day) {
        JsonObject written = new JsonObject()
                .text("date", day.date())
                .put("air", day.air().stream().map(AirJson::write).toList())
                .put("pulls", day.pulls().stream().map(DynoJson::write).toList());
        if (!day.gate().isUntouched()) {
            written.put("gate", DayJson.write(day.gate()));
        }
        if (!day.facts().isEmpty()) {
            written.put("facts", DayJson.write(day.facts()));
        }
        day.plan().ifPresent(plan -> written.put("plan", DayJson.write(plan)));
        return written.entries();
    }

    static Map<String, Object> write(StatedFigure stated) {
        JsonObject written = new JsonObject()
                .text("power", stated.power())
                .key("standard", stated.standard())
                .key("at", stated.at());
        stated.air().map(AirJson::write).ifPresent(air -> written.put("air", air));
        return written.unlessEmpty("note", stated.note()).entries();
    }

    private static Map<String, Object> write(Pull pull) {
        JsonObject written = new JsonObject()
                .put("setup", pull.setup())
                .put("number", pull.number())
                .put("file", write(pull.file()))
                .text("time", pull.time())
                .text("takenIn", pull.takenIn());
        return write(written, pull.how())
                .key("correctedAlready", pull.correctedAlready())
                .text("excluded", pull.excluded())
                .entries();
    }

    /** What holds for most pulls leaves no key: the only pull of its file, with its own power. */
    private static JsonObject write(JsonObject pull, HowRead how) {
        pull.put("columns", how.columns().stream().map(DynoJson::write).toList());
        if (how.part() > 1) {
            pull.put("part", how.part());
        }
        how.drum().ifPresent(drum -> pull.put("drum", write(drum)));
        return how.asMeasured() ? pull.put("asMeasured", true) : pull;
    }

    private static Map<String, Object> write(Drum drum) {
        return new JsonObject()
                .text("inertia", drum.inertia())
                .text("within", drum.within())
                .text("radius", drum.radius())
                .entries();
    }

    private static Map<String, Object> write(PullFile file) {
        return new JsonObject()
                .put("original", file.original())
                .put("kept", file.kept())
                .put("sha256", file.sha256())
                .entries();
    }

    static Map<String, Object> write(ColumnChoice column) {
        return new JsonObject()
                .key("role", column.role())
                .put("header", column.header())
                .text("unit", column.unit().map(Unit::symbol))
                .entries();
    }
}
