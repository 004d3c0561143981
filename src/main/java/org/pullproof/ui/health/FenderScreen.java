package org.pullproof.ui.health;

import java.util.List;
import java.util.Optional;
import org.pullproof.units.Sentence;

/**
 * Everything fender mode shows while readings are taken.
 *
 * @param title the test
 * @param conditions car, how far, and how the run is made
 * @param cylinder its number, or a dash when all are read
 * @param label what the one field takes
 * @param typed what stands in it
 * @param kept whether that is on the disk already
 * @param unit beside it
 * @param said one sentence on what was typed, or on what to do
 * @param marked whether the sentence asks for a look
 * @param keys what each key does now
 * @param rows tiles at the places of their cylinders, the upper row first
 * @param caution in one line, of the act
 */
public record FenderScreen(
        String title,
        String conditions,
        String cylinder,
        String label,
        String typed,
        boolean kept,
        String unit,
        Optional<Sentence> said,
        boolean marked,
        List<Key> keys,
        List<List<Tile>> rows,
        String caution) {
    public FenderScreen {
        keys = List.copyOf(keys);
        rows = rows.stream().map(List::copyOf).toList();
    }

    /** What a key does. */
    public record Key(String key, String does) {}

    /** How a cylinder stands in the run. */
    public enum State {
        NOW,
        READ,
        NOT_READ
    }

    /**
     * A cylinder.
     *
     * @param number its number
     * @param figure read last, or empty
     * @param more what else was read of it, in a few words
     */
    public record Tile(int number, State state, String figure, String more) {}
}
