package org.pullproof.dyno;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a person did at the gate before the first pull of one day. It holds for that day only; an aborted pull closes it again.
 *
 * @param ticked points looked at and found right, by key, with the time of the tick
 * @param passed points passed without being right, by key, with the reason typed; it stands in the report
 * @param aborts pulls broken off, in order
 */
public record DayGate(Map<String, LocalDateTime> ticked, Map<String, String> passed, List<Abort> aborts) {
    public DayGate {
        ticked = Collections.unmodifiableMap(new LinkedHashMap<>(ticked));
        passed = Collections.unmodifiableMap(new LinkedHashMap<>(passed));
        aborts = List.copyOf(aborts);
    }

    /**
     * A pull that was broken off.
     *
     * @param time when
     * @param cause in words, not blank
     */
    public record Abort(LocalDateTime time, String cause) {
        public Abort {
            if (cause.isBlank()) {
                throw new IllegalArgumentException(
                        "Name the cause of the abort, such as \"knock heard at 4,200 rpm\".");
            }
        }
    }

    /** The gate of a day on which nobody stood at it. */
    public static DayGate untouched() {
        return new DayGate(Map.of(), Map.of(), List.of());
    }

    public boolean isUntouched() {
        return equals(untouched());
    }

    /** Ticks a point; a reason given for it before is gone. */
    public DayGate tick(String point, LocalDateTime when) {
        DayGate cleared = undo(point);
        Map<String, LocalDateTime> next = new LinkedHashMap<>(cleared.ticked);
        next.put(point, when);
        return new DayGate(next, cleared.passed, aborts);
    }

    /**
     * Passes a point with a reason; its tick is gone.
     *
     * @throws IllegalArgumentException without a reason
     */
    public DayGate pass(String point, String reason) {
        if (reason.isBlank()) {
            throw new IllegalArgumentException(point + ": say why it may be passed; the reason stands in the report.");
        }
        DayGate cleared = undo(point);
        Map<String, String> next = new LinkedHashMap<>(cleared.passed);
        next.put(point, reason.strip());
        return new DayGate(cleared.ticked, next, aborts);
    }

    /** Opens a point again. */
    public DayGate undo(String point) {
        Map<String, LocalDateTime> ticks = new LinkedHashMap<>(ticked);
        Map<String, String> reasons = new LinkedHashMap<>(passed);
        ticks.remove(point);
        reasons.remove(point);
        return new DayGate(ticks, reasons, aborts);
    }

    /** Notes a pull broken off: every point has to be looked at again. */
    public DayGate abort(Abort abort) {
        List<Abort> next = new ArrayList<>(aborts);
        next.add(abort);
        return new DayGate(Map.of(), Map.of(), next);
    }
}
