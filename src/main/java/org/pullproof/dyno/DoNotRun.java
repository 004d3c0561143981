package org.pullproof.dyno;

import java.util.List;

/**
 * What must be right before a car is loaded, and when a pull is broken off. Common practice, no source.
 *
 * @param checks what is looked at on each day, besides what readings and the tune-up tell
 * @param abort signs at which a pull is broken off
 * @param abortAct how that is done, and what follows
 */
public record DoNotRun(List<Check> checks, List<String> abort, String abortAct) {
    public DoNotRun {
        checks = List.copyOf(checks);
        abort = List.copyOf(abort);
    }

    /**
     * One point of the day.
     *
     * @param key a word that stays when the words change
     * @param about car, room or people
     * @param words what must be right
     */
    public record Check(String key, String about, String words) {}
}
