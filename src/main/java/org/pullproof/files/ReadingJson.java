package org.pullproof.files;

import java.time.LocalDateTime;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.pullproof.health.AirPlace;
import org.pullproof.health.Conditions;
import org.pullproof.health.LeakZone;
import org.pullproof.health.Reading;
import org.pullproof.health.TestKind;
import org.pullproof.units.Dimension;
import org.pullproof.units.Quantity;

/** A reading with how it was made; the keys are the column names of {@code add-readings}. */
final class ReadingJson {
    private ReadingJson() {}

    static Reading read(JsonPlace place) throws BadFileException {
        place.onlyKeys(
                "test",
                "cylinder",
                "value",
                "word",
                "first",
                "round",
                "supply",
                "orifice",
                "air",
                "strokes",
                "throttle",
                "plugs",
                "engine",
                "crankingVolts",
                "crankingRpm",
                "station",
                "gauge",
                "gaugeStep",
                "oil",
                "who",
                "closed",
                "time",
                "note");
        TestKind test = place.at("test").oneOf(TestKind.class);
        return switch (test) {
            case BALANCE -> balance(place);
            case COMPRESSION_DRY -> compression(place, false);
            case COMPRESSION_WET -> compression(place, true);
            case LEAKDOWN -> leakdown(place);
            case WORK -> work(place);
            default -> sign(place, test);
        };
    }

    private static Reading balance(JsonPlace place) throws BadFileException {
        OptionalInt cylinder = place.maybeWhole("cylinder");
        Quantity drop = place.at("value").quantity(Dimension.ROTATION);
        int round = place.at("round").whole();
        Conditions conditions = conditions(place);
        LocalDateTime time = place.at("time").time();
        String note = note(place);
        return place.checked(() -> new Reading.Balance(cylinder, drop, round, conditions, time, note));
    }

    private static Reading compression(JsonPlace place, boolean wet) throws BadFileException {
        OptionalInt cylinder = place.maybeWhole("cylinder");
        Quantity gauge = place.at("value").quantity(Dimension.PRESSURE);
        Optional<Quantity> first = place.maybe("first", at -> at.quantity(Dimension.PRESSURE));
        int round = place.at("round").whole();
        Conditions conditions = conditions(place);
        LocalDateTime time = place.at("time").time();
        String note = note(place);
        return place.checked(() -> new Reading.Compression(cylinder, wet, gauge, first, round, conditions, time, note));
    }

    private static Reading leakdown(JsonPlace place) throws BadFileException {
        OptionalInt cylinder = place.maybeWhole("cylinder");
        Reading.Leak leak = place.need("value", ReadingJson::leak);
        Optional<Quantity> supply = place.maybe("supply", at -> at.quantity(Dimension.PRESSURE));
        Optional<Quantity> orifice = place.maybe("orifice", at -> at.quantity(Dimension.LENGTH));
        Optional<Set<AirPlace>> air =
                place.maybe("air", at -> new HashSet<>(at.list(one -> one.oneOf(AirPlace.class))));
        int round = place.at("round").whole();
        Conditions conditions = conditions(place);
        LocalDateTime time = place.at("time").time();
        String note = note(place);
        return place.checked(
                () -> new Reading.Leakdown(cylinder, leak, supply, orifice, air, round, conditions, time, note));
    }

    private static Reading.Leak leak(JsonPlace place) throws BadFileException {
        Optional<LeakZone> zone = LeakZone.named(place.text());
        if (zone.isPresent()) {
            return new Reading.Leak.Zone(zone.get());
        }
        Quantity figure = place.quantity();
        return switch (figure.dimension()) {
            case SHARE -> new Reading.Leak.Percentage(figure);
            case PRESSURE -> new Reading.Leak.Behind(figure);
            default ->
                throw place.problem(
                        "\"" + figure + "\" is no leak: write 14 %, 70 psi, or one of low, moderate, high.");
        };
    }

    private static Reading work(JsonPlace place) throws BadFileException {
        OptionalInt cylinder = place.maybeWhole("cylinder");
        String what = place.at("word").text();
        Conditions conditions = conditions(place);
        LocalDateTime time = place.at("time").time();
        String note = note(place);
        return place.checked(() -> new Reading.Work(cylinder, what, conditions, time, note));
    }

    private static Reading sign(JsonPlace place, TestKind test) throws BadFileException {
        OptionalInt cylinder = place.maybeWhole("cylinder");
        Optional<Quantity> figure = place.maybe("value", JsonPlace::quantity);
        Optional<String> word = place.maybe("word", JsonPlace::text);
        Conditions conditions = conditions(place);
        LocalDateTime time = place.at("time").time();
        String note = note(place);
        return place.checked(() -> new Reading.Sign(test, cylinder, figure, word, conditions, time, note));
    }

    private static String note(JsonPlace place) throws BadFileException {
        return place.maybe("note", JsonPlace::text).orElse("");
    }

    private static Conditions conditions(JsonPlace place) throws BadFileException {
        return place.refusing(ReadingJson::made);
    }

    private static Conditions made(JsonPlace place) throws BadFileException {
        return new Conditions(
                place.maybeWhole("strokes"),
                place.maybe("throttle", at -> at.oneOf(Conditions.Throttle.class)),
                place.maybe("plugs", at -> at.oneOf(Conditions.Plugs.class)),
                place.maybe("engine", at -> at.oneOf(Conditions.Warmth.class)),
                place.maybe("crankingVolts", at -> at.quantity(Dimension.VOLTAGE)),
                place.maybe("crankingRpm", at -> at.quantity(Dimension.ROTATION)),
                place.maybe("station", at -> at.quantity(Dimension.PRESSURE)),
                place.maybe("gauge", JsonPlace::text),
                place.maybe("gaugeStep", at -> at.quantity(Dimension.PRESSURE)),
                place.maybe("oil", at -> at.quantity(Dimension.VOLUME)),
                place.maybe("who", JsonPlace::text),
                place.maybe("closed", JsonPlace::quantity));
    }

    static Map<String, Object> write(Reading reading) {
        JsonObject object = new JsonObject().key("test", reading.test()).put("cylinder", reading.cylinder());
        writeValues(object, reading);
        writeConditions(object, reading.conditions());
        return object.text("time", reading.time())
                .unlessEmpty("note", reading.note())
                .entries();
    }

    private static void writeValues(JsonObject object, Reading reading) {
        if (reading instanceof Reading.Balance balance) {
            object.text("value", balance.drop()).put("round", balance.round());
        } else if (reading instanceof Reading.Compression compression) {
            object.text("value", compression.gauge())
                    .text("first", compression.first())
                    .put("round", compression.round());
        } else if (reading instanceof Reading.Leakdown leakdown) {
            writeLeakdown(object, leakdown);
        } else if (reading instanceof Reading.Sign sign) {
            object.text("value", sign.figure()).text("word", sign.word());
        } else if (reading instanceof Reading.Work work) {
            object.put("word", work.what());
        }
    }

    private static void writeLeakdown(JsonObject object, Reading.Leakdown leakdown) {
        object.put("value", text(leakdown.value()))
                .text("supply", leakdown.supply())
                .text("orifice", leakdown.orifice());
        leakdown.air()
                .ifPresent(air ->
                        object.put("air", air.stream().map(Keys::of).sorted().toList()));
        object.put("round", leakdown.round());
    }

    private static String text(Reading.Leak leak) {
        if (leak instanceof Reading.Leak.Percentage percentage) {
            return percentage.share().toString();
        }
        if (leak instanceof Reading.Leak.Behind behind) {
            return behind.pressure().toString();
        }
        return ((Reading.Leak.Zone) leak).zone().key();
    }

    private static void writeConditions(JsonObject object, Conditions made) {
        object.put("strokes", made.strokes())
                .key("throttle", made.throttle())
                .key("plugs", made.plugs())
                .key("engine", made.engine())
                .text("crankingVolts", made.crankingVolts())
                .text("crankingRpm", made.crankingRpm())
                .text("station", made.station())
                .text("gauge", made.gauge())
                .text("gaugeStep", made.gaugeStep())
                .text("oil", made.oil())
                .text("who", made.who())
                .text("closed", made.closed());
    }
}
