package org.pullproof.advice;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.pullproof.advice.GatePoint.State;
import org.pullproof.dyno.DayGate.Abort;
import org.pullproof.dyno.DoNotRun;
import org.pullproof.units.Sentence;

/**
 * The gate before the first pull of a day: engine, tune-up, car, room and people fit for full load. A sick engine is not loaded to
 * obtain a baseline. Pulls whose files come from another dyno are taken in whatever stands open here; that is only said.
 *
 * @param day the last dyno day of the session, if there is one; the gate holds for it alone
 * @param driven whether a pull was driven on that day
 * @param points in the order they are looked at
 * @param aborts pulls broken off on that day
 * @param rules what a person reads before driving
 */
public record LoadGate(
        Optional<LocalDate> day, boolean driven, List<GatePoint> points, List<Abort> aborts, DoNotRun rules) {
    /** The point that stands for the start gate of the tune-up; it is cleared there. */
    public static final String START_GATE = "start-gate";

    /** The point that asks whether the engine is bedded in; the tune-up answers it where it knows what is new. */
    public static final String BEDDED = "bedded";

    public LoadGate {
        points = List.copyOf(points);
        aborts = List.copyOf(aborts);
    }

    /** What stands in the way, in order. */
    public List<GatePoint> inTheWay() {
        return points.stream().filter(point -> !point.passed()).toList();
    }

    public boolean isOpen() {
        return inTheWay().isEmpty();
    }

    /**
     * Whether the next pull waits for it: it is closed, and no pull of the day was driven yet, one was broken off, or something that
     * was read speaks against full load.
     */
    public boolean blocks() {
        boolean against = points.stream().anyMatch(point -> point.state() == State.AGAINST);
        return !isOpen() && (!driven || !aborts.isEmpty() || against);
    }

    /** This gate as it stands on another day: nothing of that day is ticked yet. */
    public LoadGate on(LocalDate other) {
        return day.equals(Optional.of(other))
                ? this
                : new LoadGate(
                        Optional.of(other),
                        false,
                        points.stream().map(LoadGate::untouched).toList(),
                        List.of(),
                        rules);
    }

    private static GatePoint untouched(GatePoint point) {
        boolean byHand = point.state() == State.TICKED || point.state() == State.PASSED;
        return byHand && !point.key().equals(START_GATE)
                ? new GatePoint(point.key(), point.about(), point.name(), State.OPEN, "not looked at today")
                : point;
    }

    /**
     * @throws IllegalArgumentException naming the points there are, if this is none of them
     */
    public GatePoint require(String key) {
        return points.stream()
                .filter(point -> point.key().equals(key))
                .findFirst()
                .orElseThrow(
                        () -> new IllegalArgumentException("\"" + key + "\" is no point of this gate; its points are "
                                + points.stream().map(GatePoint::key).collect(Collectors.joining(", ")) + "."));
    }

    /**
     * Requires that a person may tick a point.
     *
     * @throws IllegalArgumentException if a reading speaks against it, or if it is cleared on the sheet Tune-up
     */
    public void requireTickable(String key) {
        GatePoint point = require(key);
        requireOwn(point);
        if (point.state() == State.AGAINST) {
            throw new IllegalArgumentException("Not ticked: " + point.name() + ". " + capital(point.why())
                    + ": read it again, or pass it with a reason; the reason stands in the report.");
        }
    }

    /**
     * Requires that a point is passed here and not on the sheet Tune-up.
     *
     * @throws IllegalArgumentException if it is the start gate
     */
    public void requireOwn(String key) {
        requireOwn(require(key));
    }

    private static void requireOwn(GatePoint point) {
        if (point.key().equals(START_GATE)) {
            throw new IllegalArgumentException(
                    "The start gate is cleared on the sheet Tune-up, where each part may be left off with a reason.");
        }
    }

    /** The gate in one sentence. */
    public Sentence answer() {
        List<GatePoint> open = inTheWay();
        if (open.isEmpty()) {
            return new Sentence(
                    "The gate before the first pull is **open**: all " + points.size() + " points are passed.");
        }
        String against = open.stream()
                .filter(point -> point.state() == State.AGAINST)
                .map(GatePoint::why)
                .findFirst()
                .map(why -> " " + capital(why) + ".")
                .orElse("");
        String late = driven && aborts.isEmpty() ? " Pulls of that day are there all the same." : "";
        String aborted = aborts.isEmpty()
                ? ""
                : " A pull was broken off (" + aborts.get(aborts.size() - 1).cause() + "): go through it again.";
        return new Sentence("The gate before the first pull is **closed**: " + open.size() + " of " + points.size()
                + (open.size() == 1 ? " points stands" : " points stand") + " in the way." + against + aborted + late);
    }

    /** Points passed with a reason: "brakes hold and run free: rear drums drag a little". */
    public List<String> reasons() {
        return points.stream()
                .filter(point -> point.state() == State.PASSED)
                .map(point -> point.name() + ": " + point.why())
                .toList();
    }

    private static String capital(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
