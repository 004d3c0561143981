package org.pullproof.changes;

import java.util.List;
import java.util.OptionalDouble;
import org.pullproof.units.Unit;

/**
 * What a numeric setting tried at several levels says.
 *
 * @param factor its name
 * @param unit of all levels
 * @param best level with the most power by the fitted curve, inside the range tested
 * @param low lower end of the 90 % interval of the best level; absent where no peak is proved
 * @param high upper end
 * @param recommended the level to use: of spark timing the least advance within half a percent of the top, else the tested level
 *     nearest to the best; absent where every such level knocked
 * @param next the next level worth two pulls, if there is one
 * @param levels what was tried, rising
 * @param response the fitted curve over the range tested
 * @param sentence all of it in words
 */
public record Sweep(
        String factor,
        Unit unit,
        double best,
        OptionalDouble low,
        OptionalDouble high,
        OptionalDouble recommended,
        OptionalDouble next,
        List<Level> levels,
        List<Response> response,
        String sentence) {
    public Sweep {
        levels = List.copyOf(levels);
        response = List.copyOf(response);
    }

    /** Whether the pulls prove a peak, so that the best level has an interval. */
    public boolean bounded() {
        return low.isPresent();
    }

    /**
     * One level tried.
     *
     * @param setup id of its setup
     * @param value in the sweep's unit
     * @param pulls each pull less drift, percent against the top of the fitted curve
     * @param knocked whether a pull of it knocked
     */
    public record Level(String setup, double value, List<Double> pulls, boolean knocked) {
        public Level {
            pulls = List.copyOf(pulls);
        }
    }

    /**
     * A point of the fitted curve.
     *
     * @param value level
     * @param percent against the top of the fitted curve
     * @param low lower end of the 90 % interval at this level alone, percent
     * @param high upper end
     */
    public record Response(double value, double percent, double low, double high) {}
}
