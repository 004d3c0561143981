package org.pullproof.tuneup;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.pullproof.units.Quantity;

/**
 * What the owner told beside the ticks. Immutable; one record a name, the latest counts.
 *
 * @param shelf notes on parts that are off
 * @param added parts that are off and that no step names
 * @param parts what was bought, is wanted or was kept
 * @param settings how the engine is set
 * @param breakIns what has to bed in
 * @param rechecked what was looked at once more, by its words
 * @param odometer read when the start gate was passed, if it was
 */
public record Bench(
        List<ShelfNote> shelf,
        List<AddedPart> added,
        List<PartRecord> parts,
        BaseSettings settings,
        List<BreakIn> breakIns,
        Set<String> rechecked,
        Optional<Quantity> odometer) {
    static final Bench EMPTY =
            new Bench(List.of(), List.of(), List.of(), BaseSettings.NONE, List.of(), Set.of(), Optional.empty());

    public Bench {
        shelf = List.copyOf(shelf);
        added = List.copyOf(added);
        parts = List.copyOf(parts);
        breakIns = List.copyOf(breakIns);
        rechecked = Collections.unmodifiableSet(new LinkedHashSet<>(rechecked));
    }

    /** What was noted of a part; an empty note where nothing was. */
    public ShelfNote note(String part) {
        return shelf.stream()
                .filter(note -> note.part().equals(part))
                .findFirst()
                .orElseGet(() -> ShelfNote.of(part));
    }

    Bench withNote(ShelfNote note) {
        List<ShelfNote> next = new ArrayList<>(shelf);
        next.removeIf(known -> known.part().equals(note.part()));
        if (!note.isEmpty()) {
            next.add(note);
        }
        return new Bench(next, added, parts, settings, breakIns, rechecked, odometer);
    }

    Bench withAdded(AddedPart part) {
        List<AddedPart> next = new ArrayList<>(added);
        next.removeIf(known -> known.name().equals(part.name()));
        next.add(part);
        return new Bench(shelf, next, parts, settings, breakIns, rechecked, odometer);
    }

    /** What was told of a part the tune-up uses up. */
    public Optional<PartRecord> part(String name) {
        return parts.stream().filter(part -> part.part().equals(name)).findFirst();
    }

    /** Replaces what was told of one part. */
    public Bench withPart(PartRecord part) {
        List<PartRecord> next = new ArrayList<>(parts);
        next.removeIf(known -> known.part().equals(part.part()));
        next.add(part);
        return new Bench(shelf, added, next, settings, breakIns, rechecked, odometer);
    }

    /** Forgets what was told of one part. */
    public Bench withoutPart(String name) {
        List<PartRecord> next =
                parts.stream().filter(part -> !part.part().equals(name)).toList();
        return new Bench(shelf, added, next, settings, breakIns, rechecked, odometer);
    }

    public Bench withSettings(BaseSettings next) {
        return new Bench(shelf, added, parts, next, breakIns, rechecked, odometer);
    }

    /** Adds something that has to bed in, or replaces what was told of it. */
    public Bench withBreakIn(BreakIn breakIn) {
        List<BreakIn> next = new ArrayList<>(breakIns);
        next.removeIf(known -> known.what() == breakIn.what());
        next.add(breakIn);
        return new Bench(shelf, added, parts, settings, next, rechecked, odometer);
    }

    /** Notes that something was looked at once more. */
    public Bench withRechecked(String what) {
        Set<String> next = new LinkedHashSet<>(rechecked);
        next.add(what);
        return new Bench(shelf, added, parts, settings, breakIns, next, odometer);
    }

    /** Forgets that something was looked at once more. */
    public Bench withoutRechecked(String what) {
        Set<String> next = new LinkedHashSet<>(rechecked);
        next.remove(what);
        return new Bench(shelf, added, parts, settings, breakIns, next, odometer);
    }

    public Bench withOdometer(Optional<Quantity> read) {
        return new Bench(shelf, added, parts, settings, breakIns, rechecked, read);
    }

    Stream<String> addedNames() {
        return added.stream().map(AddedPart::name);
    }
}
