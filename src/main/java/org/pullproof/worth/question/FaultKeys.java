package org.pullproof.worth.question;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.pullproof.engine.Bank;
import org.pullproof.engine.EngineProfile;
import org.pullproof.health.faults.EngineState;
import org.pullproof.health.faults.Fault;
import org.pullproof.health.faults.FaultSet;

/**
 * Faults merged by what money can do about them (worth.md 1): {@code small} is spark or mixture, {@code head} a valve of that head,
 * with a number where there are two heads, {@code rings} one bore or piston.
 */
record FaultKeys(EngineProfile profile) {
    static final String HEAD = "head";
    static final String OTHER = "other";

    /** Keys of the heads of this engine. */
    List<String> heads() {
        int count = profile.banks().size();
        return count == 1
                ? List.of(HEAD)
                : IntStream.rangeClosed(1, count).mapToObj(n -> HEAD + "-" + n).toList();
    }

    /** The bank whose head a key means; absent where there is one head, and for any other key. */
    Optional<Bank> bank(String key) {
        int place = heads().indexOf(key);
        return place < 0 || heads().size() == 1
                ? Optional.empty()
                : Optional.of(profile.banks().get(place));
    }

    /** The row of the catalogue that a key belongs to. */
    String row(String key) {
        return heads().contains(key) ? HEAD : key;
    }

    Set<String> of(FaultSet set) {
        Set<String> keys = new TreeSet<>();
        set.faults().forEach((cylinder, fault) -> of(cylinder, fault).ifPresent(keys::add));
        set.pair().ifPresent(pair -> keys.add("gasket-neighbour"));
        if (set.state() == EngineState.RINGS_ALL || set.state() == EngineState.CAM_TIMING) {
            keys.add(set.state().key());
        }
        return keys;
    }

    private Optional<String> of(int cylinder, Fault fault) {
        return switch (fault) {
            case SOUND -> Optional.empty();
            case IGNITION, FUEL, VACUUM_LEAK -> Optional.of("small");
            case VALVE_HELD_OPEN -> Optional.of("held-open");
            case EXHAUST_VALVE, INTAKE_VALVE, VALVE_NOT_OPENING -> Optional.of(headOf(cylinder));
            case RINGS, PISTON -> Optional.of("rings");
            case GASKET_COOLANT -> Optional.of("gasket-coolant");
            case GASKET_NEIGHBOUR -> Optional.of("gasket-neighbour");
            case OTHER -> Optional.of(OTHER);
        };
    }

    private String headOf(int cylinder) {
        return heads().get(profile.banks().indexOf(profile.bankOf(cylinder)));
    }
}
