package org.pullproof.health;

import java.util.List;

/** The words each further test may be answered with, as {@code add-readings} takes them. */
public final class Words {
    private Words() {}

    /** The words of a test; empty where only a figure will do, or any text ({@code codes}). */
    public static List<String> of(TestKind test) {
        return switch (test) {
            case PLUG -> List.of("normal", "sooty", "fuel-wet", "oily", "hot-blistered", "steam-clean", "damaged");
            case LASH -> List.of("in-spec", "tight", "loose");
            case COIL_SWAP -> List.of("moved", "stayed");
            case COOLANT_GAS -> List.of("positive", "negative");
            case COOLING_HOLD -> List.of("holds", "falls");
            case VACUUM -> List.of("steady-low", "regular-flick", "random-flick", "sinks-at-2500");
            case BORESCOPE -> List.of("clean", "burnt-edge", "bore-mark", "piston-damage");
            case FILTER_CUT -> List.of("clean", "bright-flakes");
            case CODES -> List.of("not-ready");
            case OBSERVATION ->
                List.of(
                        "knock-at-2500",
                        "no-knock",
                        "hoses-hard",
                        "bubbles",
                        "blue-smoke-overrun",
                        "blue-smoke-load",
                        "milky-cap");
            case WORK ->
                List.of("lash-set", "plug", "coil", "wire", "injector", "head", "rings", "ignition-parts", "other");
            case BALANCE,
                    COMPRESSION_DRY,
                    COMPRESSION_WET,
                    LEAKDOWN,
                    RUNNING_COMPRESSION,
                    CHAIN_SLACK,
                    CHARGING,
                    MISFIRES,
                    TRIMS,
                    STARTER_CURRENT,
                    OIL_PRESSURE -> List.of();
        };
    }
}
