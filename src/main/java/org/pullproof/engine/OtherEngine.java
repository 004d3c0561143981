package org.pullproof.engine;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Kinds of engine that this program does not judge, each with the reason: its rules and its physics would mislead. */
public enum OtherEngine {
    ROTARY(
            List.of("rotary", "wankel"),
            "a rotary engine has faces instead of cylinders and no valves; its compression is read face by face at a"
                    + " stated speed, by its maker's manual"),
    DIESEL(
            List.of("diesel", "compression-ignition"),
            "a diesel engine has other pressures, no spark to leave out and no throttle; read it by its maker's manual"),
    TWO_STROKE(
            List.of("two-stroke", "2-stroke"),
            "a two-stroke engine has ports where the rules here look for valves; read it by its maker's manual"),
    HIGH_VOLTAGE_HYBRID(
            List.of("hybrid", "high-voltage"),
            "a high-voltage hybrid starts by itself and its voltage kills; leave it to licensed people");

    private final List<String> names;
    private final String reason;

    OtherEngine(List<String> names, String reason) {
        this.names = names;
        this.reason = reason;
    }

    /** The kind a text names, if it names one. */
    public static Optional<OtherEngine> namedIn(String text) {
        String words = text.toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
        return Arrays.stream(values())
                .filter(kind -> kind.names.stream().anyMatch(words::contains))
                .findFirst();
    }

    /** Why it is not judged here, as a whole sentence. */
    public String sentence() {
        return "This program judges four-stroke engines with spark ignition and pistons: " + reason + ".";
    }

    /** All of them in one sentence, for people who choose an engine. */
    public static String allInOneSentence() {
        return "Four-stroke spark-ignition piston engines only: rotary, diesel and two-stroke engines and high-voltage"
                + " hybrids are not judged here, because their readings mean something else.";
    }
}
