package org.pullproof.health.faults;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What was read of one cylinder and is weighed: of repeats the last, of balance the mean of its rounds.
 *
 * @param number of the cylinder
 * @param dry D, highest reading
 * @param first F, after the first stroke
 * @param wet W, with oil
 * @param leak leak-down
 * @param drops balance
 * @param plug its look, a word
 * @param found outcomes of further tests, see {@link FurtherTests}
 */
public record CylinderReadings(
        int number,
        Optional<Gauge> dry,
        Optional<Gauge> first,
        Optional<Gauge> wet,
        Optional<Leak> leak,
        Optional<Drops> drops,
        Optional<String> plug,
        Map<Part, Integer> found) {
    public CylinderReadings {
        found = Map.copyOf(found);
    }

    /** Nothing read. */
    public static CylinderReadings none(int number) {
        return new CylinderReadings(
                number,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Map.of());
    }

    /** The parts there are. */
    public Set<Part> parts() {
        Set<Part> parts = EnumSet.noneOf(Part.class);
        dry.ifPresent(read -> parts.add(Part.DRY));
        first.ifPresent(read -> parts.add(Part.FIRST));
        wet.ifPresent(read -> parts.add(Part.WET));
        leak.flatMap(Leak::percent).ifPresent(read -> parts.add(Part.LEAKDOWN));
        leak.flatMap(Leak::air).ifPresent(read -> parts.add(Part.AIR));
        drops.ifPresent(read -> parts.add(Part.BALANCE));
        plug.ifPresent(read -> parts.add(Part.PLUG));
        parts.addAll(found.keySet());
        return parts;
    }

    /** These without one of them. */
    public CylinderReadings without(Part part) {
        return switch (part) {
            case DRY -> new CylinderReadings(number, Optional.empty(), first, wet, leak, drops, plug, found);
            case FIRST -> new CylinderReadings(number, dry, Optional.empty(), wet, leak, drops, plug, found);
            case WET -> new CylinderReadings(number, dry, first, Optional.empty(), leak, drops, plug, found);
            case LEAKDOWN -> withLeak(leak.map(Leak::withoutPercent));
            case AIR -> withLeak(leak.map(Leak::withoutAir));
            case BALANCE -> withDrops(Optional.empty());
            case PLUG -> withPlug(Optional.empty());
            case LASH, COIL_SWAP, BORESCOPE, RUNNING -> withoutFound(part);
        };
    }

    private CylinderReadings withoutFound(Part part) {
        Map<Part, Integer> fewer = new EnumMap<>(Part.class);
        fewer.putAll(found);
        fewer.remove(part);
        return new CylinderReadings(number, dry, first, wet, leak, drops, plug, fewer);
    }

    public CylinderReadings withDry(Gauge gauge) {
        return new CylinderReadings(number, Optional.of(gauge), first, wet, leak, drops, plug, found);
    }

    public CylinderReadings withWet(Gauge gauge) {
        return new CylinderReadings(number, dry, first, Optional.of(gauge), leak, drops, plug, found);
    }

    public CylinderReadings withLeak(Optional<Leak> read) {
        return new CylinderReadings(number, dry, first, wet, read, drops, plug, found);
    }

    public CylinderReadings withDrops(Optional<Drops> read) {
        return new CylinderReadings(number, dry, first, wet, leak, read, plug, found);
    }

    public CylinderReadings withPlug(Optional<String> look) {
        return new CylinderReadings(number, dry, first, wet, leak, drops, look, found);
    }
}
