package org.pullproof.files;

import java.time.LocalDateTime;
import java.util.Map;
import java.util.Optional;
import org.pullproof.units.Dimension;
import org.pullproof.units.Quantity;
import org.pullproof.weather.AirReading;
import org.pullproof.weather.Barometer;
import org.pullproof.weather.Humidity;
import org.pullproof.weather.Metar;
import org.pullproof.weather.Thermometer;
import org.pullproof.weather.TypedAir;

/** The air as typed, each reading in the form it was read in; a METAR is kept word for word. */
final class AirJson {
    private static final String METAR = "metar";
    private static final String ELEVATION = "elevation";

    private enum PressureForm {
        STATION,
        STATION_ELSEWHERE,
        ALTIMETER_SETTING,
        SEA_LEVEL,
        METAR
    }

    private enum TemperatureForm {
        INTAKE,
        METAR
    }

    private enum MoistureForm {
        RELATIVE_HUMIDITY,
        DEW_POINT,
        WET_BULB,
        UNKNOWN,
        METAR
    }

    private AirJson() {}

    static AirReading readReading(JsonPlace place) throws BadFileException {
        place.onlyKeys("time", "place", METAR, "pressure", "temperature", "moisture");
        LocalDateTime time = place.at("time").time();
        String where = place.maybe("place", JsonPlace::text).orElse("");
        return new AirReading(time, where, typed(place));
    }

    /** Air without time and place. */
    static TypedAir read(JsonPlace place) throws BadFileException {
        place.onlyKeys("pressure", "temperature", "moisture");
        return typed(place);
    }

    private static TypedAir typed(JsonPlace place) throws BadFileException {
        Optional<Metar> report = place.maybe(METAR, AirJson::report);
        Barometer barometer = place.need("pressure", at -> barometer(at, report));
        Thermometer thermometer = place.need("temperature", at -> thermometer(at, report));
        Humidity humidity = place.need("moisture", at -> humidity(at, report));
        TypedAir air = place.checked(() -> new TypedAir(barometer, thermometer, humidity));
        if (report.isPresent() && air.report().isEmpty()) {
            throw place.problem("a METAR stands here, but no reading is taken from it.");
        }
        return air;
    }

    private static Metar report(JsonPlace place) throws BadFileException {
        String text = place.text();
        return place.checked(() -> Metar.parse(text));
    }

    private static Metar needed(JsonPlace place, Optional<Metar> report) throws BadFileException {
        return report.orElseThrow(() -> place.problem("this is taken from a METAR, but the key \"metar\" is missing."));
    }

    private static Barometer barometer(JsonPlace place, Optional<Metar> report) throws BadFileException {
        place.onlyKeys("as", "read", ELEVATION, "readAt");
        PressureForm form = place.at("as").oneOf(PressureForm.class);
        if (form == PressureForm.METAR) {
            Metar told = needed(place, report);
            Quantity here = length(place, ELEVATION);
            return place.checked(() -> new Barometer.Report(told, here));
        }
        Quantity read = place.at("read").quantity(Dimension.PRESSURE);
        return place.refusing(at -> barometer(at, form, read));
    }

    private static Barometer barometer(JsonPlace place, PressureForm form, Quantity read) throws BadFileException {
        if (!(read.si() > 0)) {
            throw place.problem("A pressure of the air is above zero, was " + read + ".");
        }
        return switch (form) {
            case STATION -> new Barometer.Station(read, place.maybe(ELEVATION, at -> at.quantity(Dimension.LENGTH)));
            case STATION_ELSEWHERE -> new Barometer.Elsewhere(read, length(place, "readAt"), length(place, ELEVATION));
            case ALTIMETER_SETTING -> new Barometer.Altimeter(read, length(place, ELEVATION));
            case SEA_LEVEL, METAR -> new Barometer.SeaLevel(read, length(place, ELEVATION));
        };
    }

    private static Quantity length(JsonPlace place, String key) throws BadFileException {
        return place.at(key).quantity(Dimension.LENGTH);
    }

    private static Thermometer thermometer(JsonPlace place, Optional<Metar> report) throws BadFileException {
        place.onlyKeys("as", "read");
        if (place.at("as").oneOf(TemperatureForm.class) == TemperatureForm.METAR) {
            Metar told = needed(place, report);
            return place.checked(() -> new Thermometer.Report(told));
        }
        return new Thermometer.Intake(place.at("read").quantity(Dimension.TEMPERATURE));
    }

    private static Humidity humidity(JsonPlace place, Optional<Metar> report) throws BadFileException {
        place.onlyKeys("as", "read");
        return switch (place.at("as").oneOf(MoistureForm.class)) {
            case RELATIVE_HUMIDITY -> new Humidity.Relative(place.at("read").quantity(Dimension.SHARE));
            case DEW_POINT -> new Humidity.DewPoint(place.at("read").quantity(Dimension.TEMPERATURE));
            case WET_BULB -> new Humidity.WetBulb(place.at("read").quantity(Dimension.TEMPERATURE));
            case UNKNOWN -> new Humidity.Unknown();
            case METAR -> reported(place, needed(place, report));
        };
    }

    private static Humidity reported(JsonPlace place, Metar report) throws BadFileException {
        return place.checked(() -> new Humidity.Report(report));
    }

    static Map<String, Object> write(AirReading reading) {
        JsonObject object = new JsonObject().text("time", reading.time()).unlessEmpty("place", reading.place());
        return written(object, reading.air()).entries();
    }

    static Map<String, Object> write(TypedAir air) {
        return written(new JsonObject(), air).entries();
    }

    private static JsonObject written(JsonObject object, TypedAir air) {
        return object.text(METAR, air.report().map(Metar::text))
                .put("pressure", write(air.barometer()).entries())
                .put("temperature", write(air.thermometer()).entries())
                .put("moisture", write(air.humidity()).entries());
    }

    private static JsonObject write(Barometer barometer) {
        if (barometer instanceof Barometer.Station station) {
            return form(PressureForm.STATION, station.pressure()).text(ELEVATION, station.elevation());
        }
        if (barometer instanceof Barometer.Elsewhere elsewhere) {
            return form(PressureForm.STATION_ELSEWHERE, elsewhere.pressure())
                    .text("readAt", elsewhere.readAt())
                    .text(ELEVATION, elsewhere.here());
        }
        if (barometer instanceof Barometer.Altimeter altimeter) {
            return form(PressureForm.ALTIMETER_SETTING, altimeter.setting()).text(ELEVATION, altimeter.here());
        }
        if (barometer instanceof Barometer.SeaLevel sea) {
            return form(PressureForm.SEA_LEVEL, sea.pressure()).text(ELEVATION, sea.here());
        }
        return new JsonObject().key("as", PressureForm.METAR).text(ELEVATION, barometer.elevation());
    }

    private static JsonObject write(Thermometer thermometer) {
        return thermometer instanceof Thermometer.Intake intake
                ? form(TemperatureForm.INTAKE, intake.read())
                : new JsonObject().key("as", TemperatureForm.METAR);
    }

    private static JsonObject write(Humidity humidity) {
        if (humidity instanceof Humidity.Relative relative) {
            return form(MoistureForm.RELATIVE_HUMIDITY, relative.share());
        }
        if (humidity instanceof Humidity.DewPoint dewPoint) {
            return form(MoistureForm.DEW_POINT, dewPoint.temperature());
        }
        if (humidity instanceof Humidity.WetBulb wetBulb) {
            return form(MoistureForm.WET_BULB, wetBulb.temperature());
        }
        return new JsonObject()
                .key("as", humidity instanceof Humidity.Unknown ? MoistureForm.UNKNOWN : MoistureForm.METAR);
    }

    private static JsonObject form(Enum<?> form, Quantity read) {
        return new JsonObject().key("as", form).text("read", read);
    }
}
