package org.pullproof.report;

import static org.pullproof.report.Block.Column.figures;
import static org.pullproof.report.Block.Column.words;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.pullproof.advice.Appraisal;
import org.pullproof.dyno.DynoDay;
import org.pullproof.dyno.StatedFinding;
import org.pullproof.units.Shown;
import org.pullproof.units.Unit;
import org.pullproof.weather.AirReading;

/** What the report says of the air: each reading as it was made, and a figure of another sheet beside ours. */
record AirBlocks(Appraisal appraisal, Wording wording) {

    Block readings() {
        return new Block.Table(
                "air",
                "The air as read, and what follows",
                List.of(
                        words("time", "Read"),
                        words("place", "Where"),
                        words("pressure", "Pressure"),
                        words("temperature", "Temperature"),
                        words("humidity", "Moisture"),
                        figures("stationKpa", "Station pressure, " + wording.unit(Shown.AIR_PRESSURE))),
                appraisal.session().days().stream()
                        .map(DynoDay::air)
                        .flatMap(List::stream)
                        .map(this::row)
                        .toList());
    }

    private List<Cell> row(AirReading reading) {
        return List.of(
                Cell.words(Wording.minute(reading.time())),
                Cell.words(reading.place()),
                Cell.words(reading.air().barometer().words()),
                Cell.words(reading.air().thermometer().words()),
                Cell.words(reading.air().humidity().words()),
                wording.figure(OptionalDouble.of(reading.state().pressure().pascal()), Shown.AIR_PRESSURE, Unit.KPA));
    }

    /** A figure of another sheet, if one was told, with what its sheet does not say. */
    List<Block> stated() {
        return appraisal.dyno().stated().map(AirBlocks::points).stream().toList();
    }

    private static Block points(StatedFinding found) {
        List<String> points = new ArrayList<>();
        points.add(found.sentence().plain());
        points.addAll(found.missing());
        return new Block.Points("stated", "A figure of another sheet", points, false);
    }
}
