package org.pullproof.advice;

import org.pullproof.health.TestKind;

/**
 * Words for a test on a faulty cylinder.
 *
 * @param action what, in a few words
 * @param why one sentence
 * @param settles what it settles, one sentence
 */
record FaultTestWords(String action, String why, String settles) {

    /**
     * @param who {@code cylinder 3}
     * @param coils whether each cylinder has its own coil
     */
    static FaultTestWords of(TestKind test, String who, boolean coils) {
        return switch (test) {
            case COIL_SWAP ->
                new FaultTestWords(
                        (coils ? "Swap the coil of " : "Swap lead and plug of ") + who + " with a neighbour's",
                        "It gives little power though nothing says it leaks; spark is the cheapest cause.",
                        "If the fault moves, it was the part; if it stays, look at plug, fuel and seal.");
            case COMPRESSION_DRY ->
                new FaultTestWords(
                        "Compression, dry, all plugs out: " + who,
                        "Compression tells seal from spark and fuel.",
                        "Whether it seals like the others.");
            case COMPRESSION_WET ->
                new FaultTestWords(
                        "Compression, wet, " + who,
                        "A spoon of oil seals rings, not valves.",
                        "Rings if it rises, valves or gasket if it stays.");
            case LEAKDOWN ->
                new FaultTestWords(
                        "Leak-down, " + who + ", and listen",
                        "Where the air is heard tells more than any percentage.",
                        "Which part leaks: valve, ring or gasket.");
            case LASH ->
                new FaultTestWords(
                        "Valve lash, " + who,
                        "A valve held open by tight lash leaks like a burnt one, and setting it costs next to nothing.",
                        "Whether the head has to come off at all.");
            case BORESCOPE ->
                new FaultTestWords(
                        "Borescope, " + who,
                        "A look inside costs less than taking it apart.",
                        "A burnt edge, a mark on the bore or a damaged piston: what the repair will be.");
            case RUNNING_COMPRESSION ->
                new FaultTestWords(
                        "Running compression, " + who,
                        "A valve that does not open shows while the engine runs, and in no test at rest.",
                        "Whether the cylinder fills.");
            case COOLANT_GAS ->
                new FaultTestWords(
                        "Coolant-gas test",
                        "The chemical test needs no tools on the engine.",
                        "Whether gasket or head lets combustion gas through.");
            case BALANCE ->
                new FaultTestWords(
                        "Balance, " + who,
                        "It needs the engine running and nothing removed.",
                        "Whether it gives its share at idle.");
            case PLUG ->
                new FaultTestWords(
                        "Look at the plug, " + who,
                        "A plug shows how its cylinder burns.",
                        "Spark, mixture or oil: what the cylinder has too little or too much of.");
            default -> throw new IllegalArgumentException(test.key() + " is no test of a cylinder's fault");
        };
    }
}
