package org.pullproof.worth.trade;

/**
 * What is known of a fault that money can do something about; its numbers are judgements under {@code fault.<key>}.
 *
 * @param key {@code rings}; {@code head} stands for each head of the engine
 * @param words as a sentence goes on: "a worn bore or piston"
 * @param tired whether hard pulls raise its hazard
 * @param felt whether one cylinder is weaker for it, so that its cure is felt at once
 * @param hidden whether it is known only once somebody looks, so that no buyer takes anything off for it
 */
public record FaultRow(String key, String words, boolean tired, boolean felt, boolean hidden) {
    /** Key of the number that tells something of this fault. */
    public String number(String what) {
        return "fault." + key + "." + what;
    }
}
