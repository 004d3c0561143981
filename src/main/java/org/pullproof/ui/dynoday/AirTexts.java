package org.pullproof.ui.dynoday;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.pullproof.ui.dynoday.AirEntry.MoistureForm;
import org.pullproof.ui.dynoday.AirEntry.Part;
import org.pullproof.ui.dynoday.AirEntry.PressureForm;
import org.pullproof.units.Quantity;
import org.pullproof.weather.Barometer;
import org.pullproof.weather.Humidity;
import org.pullproof.weather.Thermometer;
import org.pullproof.weather.TypedAir;

/**
 * A reading as it stood in the fields when it was typed.
 *
 * @param pressure the form of the pressure
 * @param moisture the form of the moisture
 * @param fields the entries, by part; a part that was not typed has none
 */
record AirTexts(PressureForm pressure, MoistureForm moisture, Map<Part, String> fields) {

    static AirTexts of(TypedAir air) {
        Map<Part, String> fields = new EnumMap<>(Part.class);
        fields.put(Part.PRESSURE, text(air.barometer()));
        air.barometer().elevation().map(Quantity::toString).ifPresent(text -> fields.put(Part.ELEVATION, text));
        if (air.barometer() instanceof Barometer.Elsewhere elsewhere) {
            fields.put(Part.READ_AT, elsewhere.readAt().toString());
        }
        if (air.thermometer() instanceof Thermometer.Intake intake) {
            fields.put(Part.TEMPERATURE, intake.read().toString());
        }
        text(air.humidity()).ifPresent(text -> fields.put(Part.HUMIDITY, text));
        return new AirTexts(form(air.barometer()), form(air.humidity()), fields);
    }

    private static PressureForm form(Barometer barometer) {
        if (barometer instanceof Barometer.Report) {
            return PressureForm.METAR;
        }
        if (barometer instanceof Barometer.SeaLevel) {
            return PressureForm.SEA_LEVEL;
        }
        if (barometer instanceof Barometer.Elsewhere) {
            return PressureForm.ELSEWHERE;
        }
        return barometer instanceof Barometer.Altimeter ? PressureForm.ALTIMETER : PressureForm.STATION;
    }

    private static String text(Barometer barometer) {
        if (barometer instanceof Barometer.Report report) {
            return report.report().text();
        }
        if (barometer instanceof Barometer.SeaLevel sea) {
            return sea.pressure().toString();
        }
        if (barometer instanceof Barometer.Altimeter altimeter) {
            return altimeter.setting().toString();
        }
        if (barometer instanceof Barometer.Station station) {
            return station.pressure().toString();
        }
        if (barometer instanceof Barometer.Elsewhere elsewhere) {
            return elsewhere.pressure().toString();
        }
        return Math.round(barometer.station().pascal()) / 1e3 + " kPa";
    }

    private static MoistureForm form(Humidity humidity) {
        if (humidity instanceof Humidity.Report) {
            return MoistureForm.METAR;
        }
        if (humidity instanceof Humidity.DewPoint) {
            return MoistureForm.DEW_POINT;
        }
        if (humidity instanceof Humidity.WetBulb) {
            return MoistureForm.WET_BULB;
        }
        return humidity instanceof Humidity.Unknown ? MoistureForm.UNKNOWN : MoistureForm.HUMIDITY;
    }

    private static Optional<String> text(Humidity humidity) {
        if (humidity instanceof Humidity.DewPoint dewPoint) {
            return Optional.of(dewPoint.temperature().toString());
        }
        if (humidity instanceof Humidity.WetBulb wetBulb) {
            return Optional.of(wetBulb.temperature().toString());
        }
        return humidity instanceof Humidity.Relative relative
                ? Optional.of(relative.share().toString())
                : Optional.empty();
    }
}
