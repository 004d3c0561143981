package org.pullproof.dyno;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.pullproof.dyno.StatedFinding.Call;
import org.pullproof.dyno.StatedFinding.Figure;
import org.pullproof.dyno.StatedFinding.Range;
import org.pullproof.units.Figures;
import org.pullproof.units.Pressure;
import org.pullproof.units.Temperature;
import org.pullproof.weather.AirState;
import org.pullproof.weather.Correction;
import org.pullproof.weather.Factor;
import org.pullproof.weather.Standard;

/**
 * Turns a figure of another sheet into a range on this session's standard, and says whether the car can be said to make more or less
 * than that now.
 *
 * <pre>
 *   stated on our standard = stated · f_ours(air)/f_theirs(air)
 * </pre>
 *
 * <p>Where the sheet tells no air, the ratio is taken between the reference air of SAE J1349 and ISO 1585 (25 °C, 99 kPa dry, 1 kPa of
 * vapour) and air {@value #THINNEST} times as thin, the most that ISO 1585 allows (judgement, common practice without a source): a hall
 * is seldom colder and denser than the reference. Between two dynos the level differs with a standard deviation of {@value
 * #OTHER_DYNO} of the power (judgement, docs/methods/changes.md). The interval is normal, 90 %: 1.645 times the root of the sum
 * of squares of dyno, range (uniform) and own scatter.
 */
final class StatedJudge {
    static final double OTHER_DYNO = 0.04;
    private static final double THINNEST = 1.07;
    private static final double NINETY = 1.645;

    /** Scatter of one peak figure that was not repeated, share of the power (judgement). */
    private static final double UNREPEATED = 0.01;

    private final Correction correction;
    private final Standard standard;
    private final Figures figures;

    StatedJudge(Correction correction, Standard standard, Figures figures) {
        this.correction = correction;
        this.standard = standard;
        this.figures = figures;
    }

    /**
     * @param pulls every pull of the session in order; the counted ones of the last setup stand for what the car makes now
     */
    StatedFinding judge(StatedFigure stated, List<PullFindings> pulls) {
        Optional<Range> range = stated.standard().map(theirs -> range(stated, theirs));
        Optional<Figure> now = now(pulls);
        Optional<Figure> difference = stated.at() == StatedFigure.At.CRANK
                ? Optional.empty()
                : range.flatMap(ours -> now.map(present -> difference(ours, present)));
        Call call = stated.at() == StatedFigure.At.WHEELS
                ? difference.map(StatedJudge::call).orElse(Call.NO_CALL)
                : Call.NO_CALL;
        return new StatedFinding(
                stated,
                range,
                now,
                difference,
                call,
                new StatedWords(standard, figures).sentence(stated, range, now, difference, call),
                missing(stated, now));
    }

    private Range range(StatedFigure stated, Standard theirs) {
        double kilowatt = stated.power().si() / 1e3;
        if (stated.air().isPresent()) {
            return recomputed(kilowatt, stated, theirs);
        }
        double[] ends = Stream.of(air(1), air(THINNEST))
                .mapToDouble(air -> kilowatt * ratio(theirs, air))
                .sorted()
                .toArray();
        return new Range(ends[0], ends[1]);
    }

    /** From the measured power and the air of the sheet, as far as its readings leave both factors open. */
    private Range recomputed(double kilowatt, StatedFigure stated, Standard theirs) {
        Factor ours = correction.factor(standard, stated.air().orElseThrow());
        double value = kilowatt
                * ours.value()
                / correction.factor(theirs, stated.air().orElseThrow()).value();
        double half = stated.air().orElseThrow().widths(air -> kilowatt * ratio(theirs, air)).stream()
                .mapToDouble(width -> width.halfWidth())
                .map(width -> width * width)
                .sum();
        return new Range(value - Math.sqrt(half), value + Math.sqrt(half));
    }

    private double ratio(Standard theirs, AirState air) {
        return correction.value(standard, air) / correction.value(theirs, air);
    }

    /** The reference air, its dry pressure divided. */
    private static AirState air(double thinner) {
        return new AirState(
                Pressure.ofKilopascal(99 / thinner + 1), Pressure.ofKilopascal(1), Temperature.ofCelsius(25));
    }

    private static Optional<Figure> now(List<PullFindings> pulls) {
        List<PullFindings> counted = pulls.stream()
                .filter(pull -> !pull.excluded() && pull.peakCorrectedKw().isPresent())
                .toList();
        if (counted.isEmpty()) {
            return Optional.empty();
        }
        String latest = counted.get(counted.size() - 1).pull().setup();
        double[] peaks = counted.stream()
                .filter(pull -> pull.pull().setup().equals(latest))
                .mapToDouble(pull -> pull.peakCorrectedKw().getAsDouble())
                .toArray();
        double mean = Stream.of(peaks)
                .flatMapToDouble(java.util.Arrays::stream)
                .average()
                .orElseThrow();
        double half = peaks.length > 1 ? DynoAnswer.halfWidth(peaks) : NINETY * UNREPEATED * mean;
        return Optional.of(new Figure(mean, half));
    }

    private static Figure difference(Range stated, Figure now) {
        double dyno = OTHER_DYNO * stated.middle();
        double range = (stated.highKw() - stated.lowKw()) / Math.sqrt(12);
        double own = now.halfWidthKw() / NINETY;
        return new Figure(now.kw() - stated.middle(), NINETY * Math.sqrt(dyno * dyno + range * range + own * own));
    }

    private static Call call(Figure difference) {
        if (Math.abs(difference.kw()) <= difference.halfWidthKw()) {
            return Call.NO_CALL;
        }
        return difference.kw() < 0 ? Call.LOSS : Call.GAIN;
    }

    private static List<String> missing(StatedFigure stated, Optional<Figure> now) {
        List<String> missing = new ArrayList<>();
        if (stated.standard().isEmpty()) {
            missing.add("The sheet does not say which standard the figure is corrected to, or that it is as measured.");
        }
        if (stated.at() == StatedFigure.At.UNKNOWN) {
            missing.add(
                    "The sheet does not say whether the figure is at the wheels or at the crank; a crank figure is the"
                            + " higher one.");
        }
        if (stated.air().isEmpty()) {
            missing.add("The sheet does not say in which air it was made: station pressure, temperature, humidity.");
        }
        if (now.isEmpty()) {
            missing.add("This session has no pull with its air to hold the figure against.");
        }
        return List.copyOf(missing);
    }
}
