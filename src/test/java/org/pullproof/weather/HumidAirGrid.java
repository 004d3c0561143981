package org.pullproof.weather;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.pullproof.units.Pressure;
import org.pullproof.units.Temperature;

/** The humid air of {@code humid_air_grid.csv}: psychrolib 1.1.1, formulas of the ASHRAE Handbook, over ice below 0.01 °C. */
final class HumidAirGrid {
    private static final double ICE_BELOW = 0.01;

    private HumidAirGrid() {}

    /** One row; see the head of the file for its columns. */
    record Row(
            double celsius,
            double share,
            double kPa,
            double vapourKpa,
            double dewPoint,
            double wetBulb,
            double density) {
        AirState air() {
            return new AirState(
                    Pressure.ofKilopascal(kPa), Pressure.ofKilopascal(vapourKpa), Temperature.ofCelsius(celsius));
        }
    }

    static Stream<Row> rows() {
        return lines().stream().skip(2).map(HumidAirGrid::row);
    }

    /** Rows below saturation, where another saturation formula makes no air damper than any wick. */
    static Stream<Row> unsaturated() {
        return rows().filter(row -> row.share() < 1);
    }

    /** Rows whose wet bulb is over water, as every wet bulb of ours. */
    static Stream<Row> wetWicks() {
        return rows().filter(row -> row.wetBulb() >= ICE_BELOW);
    }

    static Stream<Row> frozenWicks() {
        return rows().filter(row -> row.wetBulb() < ICE_BELOW);
    }

    static Stream<Row> dewPoints() {
        return rows().filter(row -> row.dewPoint() >= ICE_BELOW);
    }

    static Stream<Row> frostPoints() {
        return rows().filter(row -> row.dewPoint() < ICE_BELOW);
    }

    private static Row row(String line) {
        double[] cells =
                Arrays.stream(line.split(",")).mapToDouble(Double::parseDouble).toArray();
        return new Row(cells[0], cells[1], cells[2], cells[4], cells[6], cells[7], cells[9]);
    }

    private static List<String> lines() {
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(HumidAirGrid.class.getResourceAsStream("humid_air_grid.csv")),
                StandardCharsets.UTF_8))) {
            return in.lines().toList();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
