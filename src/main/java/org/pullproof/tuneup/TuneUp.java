package org.pullproof.tuneup;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The tune-up as far as it is done.
 *
 * @param wanted ids of the steps the owner wants done; empty means all of them
 * @param done steps ticked, with the time of the tick, in order
 * @param back parts put back on the car by hand, by name
 * @param leftOff parts and checks left open on purpose, with the reason typed
 * @param plugs what is known of each plug, in order of cylinder
 * @param wires what is known of each plug wire, in order of cylinder
 * @param capOrder cylinders as their wires stand around the distributor cap, in the direction the rotor turns; empty if not read
 * @param bench what the owner told beside the ticks: notes on parts that are off, parts bought, settings
 * @param own the steps as edited for this car; empty where the program's own are followed
 */
public record TuneUp(
        Set<String> wanted,
        Map<String, LocalDateTime> done,
        Set<String> back,
        Map<String, String> leftOff,
        List<PlugRecord> plugs,
        List<WireRecord> wires,
        List<Integer> capOrder,
        Bench bench,
        Optional<StepGraph> own) {
    public TuneUp {
        wanted = Collections.unmodifiableSet(new LinkedHashSet<>(wanted));
        done = Collections.unmodifiableMap(new LinkedHashMap<>(done));
        back = Collections.unmodifiableSet(new LinkedHashSet<>(back));
        leftOff = Collections.unmodifiableMap(new LinkedHashMap<>(leftOff));
        plugs = List.copyOf(plugs);
        wires = List.copyOf(wires);
        capOrder = List.copyOf(capOrder);
    }

    public static TuneUp notBegun() {
        return new TuneUp(
                Set.of(), Map.of(), Set.of(), Map.of(), List.of(), List.of(), List.of(), Bench.EMPTY, Optional.empty());
    }

    /** Wants these steps done and no others; empty wants all. */
    public TuneUp withWanted(Set<String> steps) {
        return new TuneUp(steps, done, back, leftOff, plugs, wires, capOrder, bench, own);
    }

    /** Ticks a step. */
    public TuneUp withDone(String step, LocalDateTime when) {
        Map<String, LocalDateTime> next = new LinkedHashMap<>(done);
        next.put(step, when);
        return withDone(next);
    }

    /** Takes the tick of a step away. */
    public TuneUp withoutDone(String step) {
        Map<String, LocalDateTime> next = new LinkedHashMap<>(done);
        next.remove(step);
        return withDone(next);
    }

    private TuneUp withDone(Map<String, LocalDateTime> next) {
        return new TuneUp(wanted, next, back, leftOff, plugs, wires, capOrder, bench, own);
    }

    /** Notes that a part is back on the car. */
    public TuneUp withBack(String part) {
        Set<String> next = new LinkedHashSet<>(back);
        next.add(part);
        return withBack(next).withoutLeftOff(part).withoutFitted(part);
    }

    /** Notes that a part is off again. */
    public TuneUp withoutBack(String part) {
        Set<String> next = new LinkedHashSet<>(back);
        next.remove(part);
        return withBack(next).withoutLeftOff(part).withoutFitted(part);
    }

    // on some cylinders only is neither off nor back
    private TuneUp withoutFitted(String part) {
        return withBench(bench.withNote(bench.note(part).withFitted(Set.of())));
    }

    private TuneUp withBack(Set<String> next) {
        return new TuneUp(wanted, done, next, leftOff, plugs, wires, capOrder, bench, own);
    }

    /**
     * Leaves a part off on purpose.
     *
     * @param reason not blank: it stands in the report
     */
    public TuneUp withLeftOff(String part, String reason) {
        if (reason.isBlank()) {
            throw new IllegalArgumentException(part + ": say why it stays off; the reason stands in the report.");
        }
        Map<String, String> next = new LinkedHashMap<>(leftOff);
        next.put(part, reason.strip());
        return new TuneUp(wanted, done, back, next, plugs, wires, capOrder, bench, own);
    }

    private TuneUp withoutLeftOff(String part) {
        Map<String, String> next = new LinkedHashMap<>(leftOff);
        next.remove(part);
        return new TuneUp(wanted, done, back, next, plugs, wires, capOrder, bench, own);
    }

    /** Replaces what is known of one plug. */
    public TuneUp withPlug(PlugRecord plug) {
        List<PlugRecord> next = new ArrayList<>(plugs);
        next.removeIf(known -> known.cylinder() == plug.cylinder());
        next.add(plug);
        next.sort(Comparator.comparingInt(PlugRecord::cylinder));
        return new TuneUp(wanted, done, back, leftOff, next, wires, capOrder, bench, own);
    }

    /** Replaces what is known of one wire. */
    public TuneUp withWire(WireRecord wire) {
        List<WireRecord> next = new ArrayList<>(wires);
        next.removeIf(known -> known.cylinder() == wire.cylinder());
        next.add(wire);
        next.sort(Comparator.comparingInt(WireRecord::cylinder));
        return new TuneUp(wanted, done, back, leftOff, plugs, next, capOrder, bench, own);
    }

    /** Notes how the wires stand around the cap; empty forgets it. */
    public TuneUp withCapOrder(List<Integer> cylinders) {
        return new TuneUp(wanted, done, back, leftOff, plugs, wires, cylinders, bench, own);
    }

    /** Replaces what lies on the bench. */
    public TuneUp withBench(Bench next) {
        return new TuneUp(wanted, done, back, leftOff, plugs, wires, capOrder, next, own);
    }

    /** Follows these steps from now on; empty goes back to the program's own. */
    public TuneUp withOwn(Optional<StepGraph> steps) {
        return new TuneUp(wanted, done, back, leftOff, plugs, wires, capOrder, bench, steps);
    }
}
