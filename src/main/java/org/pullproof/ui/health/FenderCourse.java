package org.pullproof.ui.health;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import org.pullproof.engine.EngineProfile;
import org.pullproof.health.Reading;
import org.pullproof.health.Run;
import org.pullproof.health.TestKind;
import org.pullproof.health.TestOrder;
import org.pullproof.health.TestOrder.Stop;

/** Which cylinder is read now, in the order of the test, and what is kept of the run. */
final class FenderCourse {
    private final Supplier<EngineProfile> engine;
    private final FenderSetting setting;
    private final FenderReadings readings;
    private int place;

    FenderCourse(Supplier<EngineProfile> engine, FenderSetting setting, FenderReadings readings) {
        this.engine = engine;
        this.setting = setting;
        this.readings = readings;
    }

    EngineProfile engine() {
        return engine.get();
    }

    TestOrder order() {
        return TestOrder.of(setting.test(), engine());
    }

    /** The run as it stands: what was read in this way, and is weighed. */
    Run run() {
        return Run.of(readings.all(), setting.test(), setting.way());
    }

    /** Whether every cylinder was passed. */
    boolean isOver() {
        return place >= order().stops().size();
    }

    /** The reading to be made now. */
    Stop stop() {
        return order().stops().get(place);
    }

    int cylinder() {
        return stop().cylinder();
    }

    void next() {
        place++;
    }

    void back() {
        place = Math.max(0, place - 1);
    }

    /**
     * Begins.
     *
     * @param wanted the cylinder, empty for the first that is not read
     */
    void begin(OptionalInt wanted) {
        List<Stop> stops = order().stops();
        place = 0;
        for (int i = stops.size() - 1; i >= 0; i--) {
            if (wanted.isPresent() ? stops.get(i).cylinder() == wanted.getAsInt() : isOpen(stops.get(i))) {
                place = i;
            }
        }
    }

    private boolean isOpen(Stop stop) {
        return kept(stop, setting.test()).isEmpty();
    }

    /** Goes to where a reading of the test belongs; returns whether there is such a place. */
    boolean goTo(Reading reading) {
        List<Stop> stops = order().stops();
        for (int i = 0; i < stops.size(); i++) {
            boolean same = reading.cylinder().equals(OptionalInt.of(stops.get(i).cylinder()));
            if (same && inRound(reading, stops.get(i)) && Run.sameTest(reading.test(), setting.test())) {
                place = i;
                return true;
            }
        }
        return false;
    }

    /** The last reading kept of a stop. */
    Optional<Reading> kept(Stop stop, TestKind kind) {
        return run().at(stop.cylinder(), kind).stream()
                .filter(reading -> inRound(reading, stop))
                .reduce((one, next) -> next);
    }

    private boolean inRound(Reading reading, Stop stop) {
        return order().rounds() == 1 || round(reading) == stop.round();
    }

    /** How many stops are read. */
    long read() {
        return order().stops().stream().filter(stop -> !isOpen(stop)).count();
    }

    /** The round of a further reading beside those there are. */
    int furtherRound(TestKind kind) {
        int most = run().at(cylinder(), kind).stream()
                .mapToInt(FenderCourse::round)
                .max()
                .orElse(0);
        return Math.max(most, order().rounds()) + 1;
    }

    static int round(Reading reading) {
        if (reading instanceof Reading.Balance balance) {
            return balance.round();
        }
        if (reading instanceof Reading.Compression compression) {
            return compression.round();
        }
        return reading instanceof Reading.Leakdown leakdown ? leakdown.round() : 1;
    }
}
