package org.pullproof.tuneup;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The tune-up as far as it is done.
 *
 * @param done steps ticked, with the time of the tick, in order
 * @param back parts put back on the car by hand, by name
 * @param plugs what is known of each plug, in order of cylinder
 */
public record TuneUp(Map<String, LocalDateTime> done, Set<String> back, List<PlugRecord> plugs) {
    public TuneUp {
        done = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(done));
        back = java.util.Collections.unmodifiableSet(new LinkedHashSet<>(back));
        plugs = List.copyOf(plugs);
    }

    public static TuneUp notBegun() {
        return new TuneUp(Map.of(), Set.of(), List.of());
    }

    /** Ticks a step. */
    public TuneUp withDone(String step, LocalDateTime when) {
        Map<String, LocalDateTime> next = new LinkedHashMap<>(done);
        next.put(step, when);
        return new TuneUp(next, back, plugs);
    }

    /** Takes the tick of a step away. */
    public TuneUp withoutDone(String step) {
        Map<String, LocalDateTime> next = new LinkedHashMap<>(done);
        next.remove(step);
        return new TuneUp(next, back, plugs);
    }

    /** Notes that a part is back on the car. */
    public TuneUp withBack(String part) {
        Set<String> next = new LinkedHashSet<>(back);
        next.add(part);
        return new TuneUp(done, next, plugs);
    }

    /** Notes that a part is off again. */
    public TuneUp withoutBack(String part) {
        Set<String> next = new LinkedHashSet<>(back);
        next.remove(part);
        return new TuneUp(done, next, plugs);
    }

    /** Replaces what is known of one plug. */
    public TuneUp withPlug(PlugRecord plug) {
        List<PlugRecord> next = new ArrayList<>(plugs);
        next.removeIf(known -> known.cylinder() == plug.cylinder());
        next.add(plug);
        next.sort(java.util.Comparator.comparingInt(PlugRecord::cylinder));
        return new TuneUp(done, back, next);
    }
}
