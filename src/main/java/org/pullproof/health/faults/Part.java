package org.pullproof.health.faults;

import java.util.Optional;
import org.pullproof.health.TestKind;

/** One reading of a cylinder as it is weighed. */
public enum Part {
    DRY(TestKind.COMPRESSION_DRY, "the dry compression"),
    FIRST(TestKind.COMPRESSION_DRY, "the first stroke"),
    WET(TestKind.COMPRESSION_WET, "the wet compression"),
    LEAKDOWN(TestKind.LEAKDOWN, "the leak-down"),
    AIR(TestKind.LEAKDOWN, "where the air is heard"),
    BALANCE(TestKind.BALANCE, "the balance"),
    PLUG(TestKind.PLUG, "the plug's look"),
    LASH(TestKind.LASH, "the lash"),
    COIL_SWAP(TestKind.COIL_SWAP, "the swap of coils"),
    BORESCOPE(TestKind.BORESCOPE, "the look inside"),
    RUNNING(TestKind.RUNNING_COMPRESSION, "the running compression");

    private final TestKind test;
    private final String words;

    Part(TestKind test, String words) {
        this.test = test;
        this.words = words;
    }

    public TestKind test() {
        return test;
    }

    /** As the subject of a sentence. */
    public String words() {
        return words;
    }

    /** Whether it may be a blunder that a repeat would show. */
    public boolean mayBeABlunder() {
        return switch (this) {
            case DRY, FIRST, WET, LEAKDOWN, BALANCE -> true;
            case AIR, PLUG, LASH, COIL_SWAP, BORESCOPE, RUNNING -> false;
        };
    }

    /** Of a further test, which is answered by one of a few words. */
    static Optional<Part> ofWord(TestKind test) {
        return switch (test) {
            case LASH -> Optional.of(LASH);
            case COIL_SWAP -> Optional.of(COIL_SWAP);
            case BORESCOPE -> Optional.of(BORESCOPE);
            case RUNNING_COMPRESSION -> Optional.of(RUNNING);
            default -> Optional.empty();
        };
    }
}
