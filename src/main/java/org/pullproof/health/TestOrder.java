package org.pullproof.health;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.pullproof.engine.EngineProfile;

/**
 * The order in which the cylinders are read in a test: in firing order for leak-down, because the crank is turned from one to the
 * next; balance by number and then back again, because the engine warms up meanwhile; every other test by number.
 *
 * <p>Source: common practice, no source.
 *
 * @param stops one a reading, first things first
 */
public record TestOrder(List<Stop> stops) {
    public TestOrder {
        stops = List.copyOf(stops);
    }

    /**
     * One reading to be made.
     *
     * @param cylinder its number
     * @param round 1, or 2 on the way back
     */
    public record Stop(int cylinder, int round) {}

    public static TestOrder of(TestKind test, EngineProfile profile) {
        return switch (test) {
            case LEAKDOWN -> once(profile.firing().cylinders());
            case BALANCE -> thereAndBack(byNumber(profile));
            default -> once(byNumber(profile));
        };
    }

    private static List<Integer> byNumber(EngineProfile profile) {
        return IntStream.rangeClosed(1, profile.cylinders()).boxed().toList();
    }

    private static TestOrder once(List<Integer> cylinders) {
        return new TestOrder(round(cylinders, 1).toList());
    }

    private static TestOrder thereAndBack(List<Integer> cylinders) {
        List<Integer> back = new ArrayList<>(cylinders);
        Collections.reverse(back);
        return new TestOrder(Stream.concat(round(cylinders, 1), round(back, 2)).toList());
    }

    private static Stream<Stop> round(List<Integer> cylinders, int round) {
        return cylinders.stream().map(cylinder -> new Stop(cylinder, round));
    }

    /** The cylinders in the order of the first round. */
    public List<Integer> cylinders() {
        return stops.stream()
                .filter(stop -> stop.round() == 1)
                .map(Stop::cylinder)
                .toList();
    }

    /** How often every cylinder is read. */
    public int rounds() {
        return stops.stream().mapToInt(Stop::round).max().orElse(1);
    }

    /** The cylinder read after another; after the last comes the first. */
    public int after(int cylinder) {
        List<Integer> order = cylinders();
        return order.get((order.indexOf(cylinder) + 1) % order.size());
    }
}
