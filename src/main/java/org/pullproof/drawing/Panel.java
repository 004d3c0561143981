package org.pullproof.drawing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * One panel of a chart over engine speed, its figures in the unit that is shown.
 *
 * @param title with the unit: "Power at the wheels, hp"
 * @param detail what else is to be known, set plainly behind the title; may be empty
 * @param head of its column beside the crosshair: "hp"
 * @param decimals of a figure read off
 * @param signed whether figures carry their sign
 * @param weight share of the height, against the others
 * @param lines one a setup, drawn and named
 * @param pulls hairlines
 * @param scale figures that the axis has to enclose besides the lines
 * @param ribbon half its width about zero, if there is one
 */
record Panel(
        String title,
        String detail,
        String head,
        int decimals,
        boolean signed,
        double weight,
        List<SetupLine> lines,
        List<PullLine> pulls,
        List<Double> scale,
        OptionalDouble ribbon) {
    Panel {
        lines = List.copyOf(lines);
        pulls = List.copyOf(pulls);
        scale = List.copyOf(scale);
    }

    /**
     * The line of a setup.
     *
     * @param order place among the setups, from 0
     * @param setup id
     * @param name what people call it
     * @param values by rpm; where a speed is not covered there is none
     */
    record SetupLine(int order, String setup, String name, SortedMap<Integer, Double> values) {
        /** Its figure at a speed: that of the next point not above it, if the line reaches so far. */
        OptionalDouble at(int rpm) {
            boolean covers = !values.isEmpty() && rpm >= values.firstKey() && rpm <= values.lastKey();
            return covers ? OptionalDouble.of(between(rpm)) : OptionalDouble.empty();
        }

        private double between(int rpm) {
            int below = values.headMap(rpm + 1).lastKey();
            int above = values.tailMap(rpm).firstKey();
            double low = Optional.ofNullable(values.get(below)).orElseThrow();
            double high = Optional.ofNullable(values.get(above)).orElseThrow();
            return below == above ? low : low + (high - low) * (rpm - below) / (above - below);
        }
    }

    /** The line of one pull: figures at even steps of speed. */
    static final class PullLine {
        private final int firstRpm;
        private final int step;
        private final double[] values;

        PullLine(int firstRpm, int step, double[] values) {
            this.firstRpm = firstRpm;
            this.step = step;
            this.values = values.clone();
        }

        int size() {
            return values.length;
        }

        int rpm(int i) {
            return firstRpm + i * step;
        }

        double value(int i) {
            return values[i];
        }
    }

    /** Round figures that enclose every line. */
    Ticks ticks(int most) {
        DoubleStream ofLines =
                lines.stream().flatMap(line -> line.values().values().stream()).mapToDouble(Double::doubleValue);
        double[] all = Stream.concat(scale.stream(), ofLines.boxed())
                .mapToDouble(Double::doubleValue)
                .filter(Double::isFinite)
                .toArray();
        return Ticks.covering(
                DoubleStream.of(all).min().orElse(0), DoubleStream.of(all).max().orElse(1), most);
    }
}
